namespace WearWatch.Dashboard.Tests.People;

/// <summary>An account at a company's OpenID provider.</summary>
/// <param name="Name">What the person is called.</param>
/// <param name="Login">The name of the account.</param>
/// <param name="Groups">The groups to which it belongs.</param>
public sealed record CompanyAccount(string Name, string Login, params string[] Groups);
