using Spectre.Console.Cli;

namespace Lampwright.Cli;

/// <summary>Says in one sentence what went wrong. Nobody at a bench reads a stack trace.</summary>
internal static class Faults
{
    /// <summary>Tells a fault and gives the number to end with.</summary>
    public static int Tell(Exception fault, Terminal terminal)
    {
        var (sentence, code) = fault switch
        {
            OperationCanceledException => ("Ended before it was finished.", ExitCode.Interrupted),
            CommandAppException e => (e.Message.TrimEnd('.') + ". See: lampwright --help", ExitCode.NotUnderstood),
            OutOfMemoryException => (
                "The light is too large for the memory of this machine; ask for fewer --draws.",
                ExitCode.Problems
            ),
            IOException or UnauthorizedAccessException => (
                $"A file cannot be read or written ({fault.Message.TrimEnd('.')}).",
                ExitCode.Problems
            ),
            _ => (
                $"This is a fault of Lampwright, not of your file: {fault.GetType().Name}, {fault.Message.TrimEnd('.')}. "
                    + "Please report it with the design file.",
                ExitCode.OurFault
            ),
        };
        terminal.Error.WriteLine(Show.Words.Plain(sentence));
        return code;
    }
}
