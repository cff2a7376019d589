namespace WearWatch.Plant.Rounds;

/// <summary>
/// Moves in the order in which the plant is walked: a place among those of its line, or a whole line among the lines.
/// </summary>
public static class WalkMoves
{
    /// <summary>The order with a chain one place earlier on its line.</summary>
    /// <param name="order">The chains in walking order, each with its line.</param>
    /// <param name="id">Which.</param>
    public static IReadOnlyList<int> Earlier(IReadOnlyList<(int Id, string Line)> order, int id)
    {
        var at = order.ToList().FindIndex(c => c.Id == id);
        if (at < 1 || order[at - 1].Line != order[at].Line) return [.. order.Select(c => c.Id)];
        return [.. order.Take(at - 1).Append(order[at]).Append(order[at - 1]).Concat(order.Skip(at + 1)).Select(c => c.Id)];
    }

    /// <summary>The order with a line one earlier among the lines.</summary>
    public static IReadOnlyList<int> LineEarlier(IReadOnlyList<(int Id, string Line)> order, string line)
    {
        var lines = order.Select(c => c.Line).Distinct().ToList();
        var at = lines.IndexOf(line);
        if (at > 0) (lines[at - 1], lines[at]) = (lines[at], lines[at - 1]);
        return [.. lines.SelectMany(l => order.Where(c => c.Line == l)).Select(c => c.Id)];
    }
}
