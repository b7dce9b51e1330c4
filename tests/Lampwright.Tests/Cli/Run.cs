using System.Text;
using System.Text.Json;
using Lampwright.Cli;

namespace Lampwright.Tests.Cli;

/// <summary>What a call of the command line said and ended with.</summary>
internal sealed record Run(int Code, string Answer, string Error)
{
    /// <summary>The answer as JSON; fails when anything else stands beside it.</summary>
    public JsonElement Json => JsonDocument.Parse(Answer).RootElement;

    /// <summary>Calls the command line in this process.</summary>
    public static async Task<Run> Of(params string[] words)
    {
        using var answer = new MemoryStream();
        using var error = new MemoryStream();
        int code;
        using (var terminal = new Terminal(answer, error))
        {
            code = await CommandLine.RunAsync(words, terminal, TestContext.Current.CancellationToken);
        }

        var run = new Run(code, Encoding.UTF8.GetString(answer.ToArray()), Encoding.UTF8.GetString(error.ToArray()));
        Assert.DoesNotMatch(@"(?m)^\s+at [\w.]+\(", run.Answer + run.Error);
        Assert.DoesNotContain("Exception", run.Answer + run.Error, StringComparison.Ordinal);
        return run;
    }
}
