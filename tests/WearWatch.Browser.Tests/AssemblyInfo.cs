using WearWatch.Browser.Tests;
using Xunit.v3;

[assembly: AssemblyFixture(typeof(Screen))]
[assembly: AssemblyFixture(typeof(BigMill))]
[assembly: AssemblyFixture(typeof(SortedMill))]
[assembly: Parallelization(MaxThreads = 3)] // they wait for the browser more than they compute
