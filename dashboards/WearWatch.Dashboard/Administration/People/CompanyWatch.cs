using Microsoft.Extensions.Options;
using WearWatch.Plant.People;
using WearWatch.Worker.Jobs;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Asks the company's OpenID provider again and again whether who is signed in may still be.</summary>
internal sealed class CompanyWatch(
    CompanySessions sessions, CompanyTokens tokens, IServiceScopeFactory scopes, IOptions<OpenIdOptions> options,
    TimeProvider clock, ILogger<CompanyWatch> log)
    : JobLoop("check of company accounts", options.Value.Check, clock, log)
{
    protected override async Task RunOnceAsync(CancellationToken ct)
    {
        foreach (var (session, person) in await sessions.DueAsync(options.Value.Check, ct))
        {
            var answer = await tokens.AskAsync(session.Tokens, ct);
            if (answer.Tokens.Length > 0) await sessions.KeepAsync(session.SessionId, answer.Tokens, ct);
            if (answer.Vouches is { } vouches) await HearAsync(person, vouches, answer.Groups);
        }
    }

    private async Task HearAsync(int personId, bool vouches, IReadOnlyCollection<string> groups)
    {
        await using var scope = scopes.CreateAsyncScope();
        var desk = scope.ServiceProvider.GetRequiredService<CompanyDesk>();
        if (vouches) await desk.RenewAsync(personId, groups);
        else if (await scope.ServiceProvider.GetRequiredService<PeopleDesk>().FindAsync(personId) is { } person)
            await desk.DisownAsync(person);
    }
}
