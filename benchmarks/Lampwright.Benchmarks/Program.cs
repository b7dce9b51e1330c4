using BenchmarkDotNet.Running;
using Lampwright.Benchmarks;

// Without --quick, BenchmarkDotNet with its own words (--filter '*', --list flat).
return args is ["--quick", ..] ? Goals.Show(args[1..]) : Detailed(args);

static int Detailed(string[] args)
{
    BenchmarkSwitcher.FromAssembly(typeof(RoadBenchmarks).Assembly).Run(args);
    return 0;
}
