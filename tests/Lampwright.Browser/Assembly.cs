using Lampwright.Browser;
using Xunit.Sdk;
using Xunit.v3;

[assembly: AssemblyFixture(typeof(BrowserFixture))]
[assembly: Parallelization(Mode = ParallelMode.None)]
