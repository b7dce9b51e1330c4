using BenchmarkDotNet.Running;
using Lampwright.Benchmarks;
using Lampwright.Benchmarks.Problems;

// NAME FILE solves a problem file; --quick shows the goals; anything else is for BenchmarkDotNet (--filter '*', --list flat).
return args switch
{
    ["--quick", "papers-of", _] => Goals.Show(args[1..]),
    ["--quick", var name, ..] when args.Length > 2 || Speed.Kinds.ContainsKey(name) => Speed.Run(args[1..]),
    ["--quick", ..] => Goals.Show(args[1..]),
    _ => Detailed(args),
};

static int Detailed(string[] args)
{
    BenchmarkSwitcher.FromAssembly(typeof(RoadBenchmarks).Assembly).Run(args);
    return 0;
}
