namespace WearWatch.Storage.Rows;

/// <summary>What belongs to a session that was begun with a company account: how the OpenID provider knows it.</summary>
public sealed class CompanySessionRow
{
    /// <summary>The session.</summary>
    public required string SessionId { get; init; }

    /// <summary>The provider's own mark of it (<c>sid</c>); empty where it gives none.</summary>
    public string ProviderSession { get; init; } = "";

    /// <summary>The provider's tokens, sealed by the dashboard.</summary>
    public required string Tokens { get; set; }

    /// <summary>When the provider was last asked whether the person may still come in.</summary>
    public DateTimeOffset CheckedAt { get; set; }
}
