using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;

namespace Lampwright.Files.Opening;

internal sealed record OpenedLight(LoadedDesign Loaded, IReadOnlyList<FileProblem> Problems)
{
    public static OpenedLight At(string path)
    {
        var loaded = DesignLoader.Load(path);
        return new(loaded, loaded.Problems);
    }

    public PreparedEvaluation Prepare() => Evaluator.Prepare(Loaded.Design);

    public (int Line, int Column)? Place(string path)
    {
        var place = Loaded.Positions.Find(path);
        return (place.Line, place.Column);
    }
}
