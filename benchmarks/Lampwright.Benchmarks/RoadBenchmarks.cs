using BenchmarkDotNet.Attributes;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;

namespace Lampwright.Benchmarks;

/// <summary>The road from file to packet, piece by piece, on the herbarium light.</summary>
[MemoryDiagnoser]
public class RoadBenchmarks
{
    private readonly OpenedLight _opened = OpenedLight.At(Herbarium.File);
    private readonly PreparedEvaluation _prepared;
    private readonly LightEvaluation _light;

    public RoadBenchmarks()
    {
        _prepared = _opened.Prepare();
        _light = _prepared.WithBands(512);
    }

    [Benchmark]
    public OpenedLight LoadFile() => OpenedLight.At(Herbarium.File);

    [Benchmark]
    public LightEvaluation Nominal() => _opened.Prepare().Nominal();

    [Benchmark]
    public LightEvaluation Bands512() => _opened.Prepare().WithBands(512);

    [Benchmark]
    public LightEvaluation Draws512Alone() => _prepared.WithBands(512);

    [Benchmark]
    public byte[] Packet() => PacketWriter.Zip(_opened.Loaded.Design, _light, _opened.Problems);
}
