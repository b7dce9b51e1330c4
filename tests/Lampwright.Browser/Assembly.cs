using Lampwright.Browser;

[assembly: AssemblyFixture(typeof(BrowserFixture))]
[assembly: CollectionBehavior(DisableTestParallelization = true)]
