namespace WearWatch.Storage.Rows;

/// <summary>A key with which a machine speaks to the HTTP API.</summary>
public sealed class ApiKeyRow
{
    public int Id { get; init; }

    /// <summary>What uses it; its entries are kept under this name.</summary>
    public required string Name { get; init; }

    /// <summary>SHA-256 of the key in hexadecimal digits. A key is 256 random bits, so no slow hash is needed.</summary>
    public required string Hash { get; init; }

    public PersonRoles Roles { get; init; }

    public required string MadeBy { get; init; }

    public DateTimeOffset MadeAt { get; init; }

    /// <summary>To the minute; null while it was never used.</summary>
    public DateTimeOffset? LastUsedAt { get; set; }

    public DateTimeOffset? WithdrawnAt { get; set; }
}
