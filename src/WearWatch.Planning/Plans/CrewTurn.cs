namespace WearWatch.Planning.Plans;

/// <summary>One turn of a crew: the windows that draw on its hours, and the hours.</summary>
/// <param name="Name">The turn's own name, which no other turn has.</param>
/// <param name="Crew">Who works; the shutdown's id where nobody is named.</param>
/// <param name="Windows">The windows.</param>
/// <param name="Hours">The crew's hours.</param>
internal sealed record CrewTurn(string Name, string Crew, int[] Windows, double Hours);
