using Lampwright.Files.DesignFile;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class ExampleFilesTests
{
    [Fact]
    public void Every_example_is_read_without_a_problem()
    {
        var files = Directory
            .EnumerateFiles(Path.Combine(DocumentationTests.Root(), "examples"), "*.toml", SearchOption.AllDirectories)
            .Where(f => Path.GetFileName(f) != "shop.toml")
            .ToList();
        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            var problems = DesignLoader.Load(file).Problems;
            Assert.True(problems.Count == 0, string.Join("\n", problems));
        }
    }
}
