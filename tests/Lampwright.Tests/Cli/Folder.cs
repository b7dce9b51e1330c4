namespace Lampwright.Tests.Cli;

/// <summary>A folder of a test's own, gone with it.</summary>
internal sealed class Folder : IDisposable
{
    private readonly string _path = Directory.CreateTempSubdirectory("lampwright-").FullName;

    public string At(string name) => Path.Combine(_path, name);

    public string With(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public string With(string name, byte[] bytes)
    {
        File.WriteAllBytes(At(name), bytes);
        return At(name);
    }

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
