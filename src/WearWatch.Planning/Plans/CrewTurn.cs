namespace WearWatch.Planning.Plans;

/// <summary>One turn of a crew: the windows that draw on its hours, and the hours.</summary>
internal sealed record CrewTurn(string Name, int[] Windows, double Hours);
