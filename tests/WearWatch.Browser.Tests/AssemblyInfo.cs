using WearWatch.Browser.Tests;

[assembly: AssemblyFixture(typeof(Screen))]
