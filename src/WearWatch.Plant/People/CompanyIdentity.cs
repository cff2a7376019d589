namespace WearWatch.Plant.People;

/// <summary>Whom an OpenID provider vouches for.</summary>
/// <param name="Issuer">The provider.</param>
/// <param name="Subject">The person's number there, which never changes.</param>
/// <param name="Name">What the person is called.</param>
/// <param name="Account">The name of the account; empty where none is said.</param>
/// <param name="Groups">The groups to which the person belongs.</param>
public sealed record CompanyIdentity(
    string Issuer, string Subject, string Name, string Account, IReadOnlyCollection<string> Groups)
{
    private const int Longest = 80;

    /// <summary>The name as a name of a person here, which stands beside entries: letters, digits, spaces and . ' - _.</summary>
    public string NameHere
    {
        get
        {
            var letters = Name.Select(c => char.IsLetterOrDigit(c) || ".'-_".Contains(c) ? c : ' ').ToArray();
            var name = string.Join(' ', new string(letters).Split(' ', StringSplitOptions.RemoveEmptyEntries));
            return name.Length <= Longest ? name : name[..Longest].TrimEnd();
        }
    }
}
