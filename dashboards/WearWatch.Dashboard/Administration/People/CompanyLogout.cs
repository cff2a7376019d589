namespace WearWatch.Dashboard.Administration.People;

/// <summary>What the company's OpenID provider has ended.</summary>
/// <param name="Issuer">The provider.</param>
/// <param name="Subject">The person's number there; empty where it says none.</param>
/// <param name="Session">Its mark of the session; empty for all of that person.</param>
public sealed record CompanyLogout(string Issuer, string Subject, string Session);
