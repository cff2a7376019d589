using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("WearWatch.Learning.Tests")]
