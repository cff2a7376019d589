
using WearWatch.Dashboard.Kit.Words;

namespace WearWatch.Dashboard.Engineer;

/// <summary>The shapes by which the groups of a picture are told apart where colour does not reach.</summary>
public static class GroupMark
{
    /// <summary>The path of a group's mark around a point: circle, square, triangle, diamond, cross.</summary>
    public static string Path(int group, double x, double y)
    {
        var at = $"M{Show.Coordinate(x)} {Show.Coordinate(y)}";
        return at + (group % 5) switch
        {
            0 => "m-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0z",
            1 => "m-3.2-3.2h6.4v6.4h-6.4z",
            2 => "m0-4.2 4 7h-8z",
            3 => "m0-4.6 4.2 4.6-4.2 4.6-4.2-4.6z",
            _ => "m-4-1.3h2.7v-2.7h2.6v2.7h2.7v2.6h-2.7v2.7h-2.6v-2.7h-2.7z",
        };
    }
}
