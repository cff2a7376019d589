using System.ComponentModel;
using Microsoft.AspNetCore.Mvc;

namespace WearWatch.Dashboard.Api.Lists;

/// <summary>What a program wants of a list; the same for every list of the API.</summary>
internal sealed record ListWish
{
    /// <summary>More rows come page by page.</summary>
    public const int Most = 1000;

    /// <summary>How many rows at most.</summary>
    [FromQuery(Name = "take"), Description("How many rows at most, 1 to 1000.")]
    public int? Take { get; init; }

    /// <summary>Where the page before ended; empty for the first page.</summary>
    [FromQuery(Name = "cursor"), Description("Where the page before ended: follow the header Link with rel=next.")]
    public string? Cursor { get; init; }

    /// <summary>Only these members of each row.</summary>
    [FromQuery(Name = "fields"), Description("Only these members of each row, parted by commas; all when left out.")]
    public string? Fields { get; init; }
}
