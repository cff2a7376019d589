using Microsoft.AspNetCore.Identity;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Refuses passwords that are guessed first: common ones, names, repetitions and runs of keys.</summary>
/// <remarks>
/// NIST SP 800-63B asks for a comparison with common passwords and no rules of composition. The estimate is that of
/// D. L. Wheeler, zxcvbn: Low-Budget Password Strength Estimation, USENIX Security 2016, with its lists of common passwords,
/// words and names.
/// </remarks>
public sealed class GuessablePassword : IPasswordValidator<PersonRow>
{
    // The time to estimate one grows with its length.
    private const int Longest = 128;

    private const int LookedAt = 48;
    private const double SafeBits = 28; // 10^8 guesses: at the door's pace thousands of years
    private static readonly string[] ours = ["wearwatch", "chain", "plant", "technician", "planner", "engineer", "administrator"];

    /// <inheritdoc/>
    public Task<IdentityResult> ValidateAsync(UserManager<PersonRow> manager, PersonRow user, string? password)
    {
        var text = password ?? "";
        if (text.Length > Longest) return Refuse($"A password has at most {Longest} characters.");
        var looked = text.Length <= LookedAt ? text : text[..LookedAt];
        var name = user.UserName ?? "";
        return Zxcvbn.Zxcvbn.MatchPassword(looked, [.. ours, name, .. name.Split(' ')]).Entropy >= SafeBits
            ? Task.FromResult(IdentityResult.Success)
            : Refuse("This password is guessed soon. Take several words that do not belong together.");
    }

    private static Task<IdentityResult> Refuse(string why) =>
        Task.FromResult(IdentityResult.Failed(new IdentityError { Description = why }));
}
