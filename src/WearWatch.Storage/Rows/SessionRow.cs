namespace WearWatch.Storage.Rows;

/// <summary>
/// A person's session at one browser, from sign-in to its end. The cookie names it; without an open row it is void.
/// </summary>
public sealed class SessionRow
{
    /// <summary>128 random bits in hexadecimal digits.</summary>
    public required string Id { get; init; }

    public int PersonId { get; init; }

    /// <summary>The shared tablet on which it was begun by PIN; null on a device of one's own.</summary>
    public int? TabletId { get; init; }

    public DateTimeOffset BegunAt { get; init; }

    /// <summary>When it was last used, to some minutes.</summary>
    public DateTimeOffset SeenAt { get; set; }

    /// <summary>When it ends by itself unless it is used before.</summary>
    public DateTimeOffset EndsAt { get; set; }

    /// <summary>When it was ended: by signing out, by a new password or role; null while it stands.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    /// <summary>What the browser says it is, shortened.</summary>
    public string Device { get; init; } = "";

    public string Address { get; init; } = "";
}
