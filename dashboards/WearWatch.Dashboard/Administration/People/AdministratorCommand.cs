using Microsoft.AspNetCore.Identity;
using WearWatch.Plant.People;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// The arguments <c>administrator NAME</c>: for a machine without a browser, and for an administrator whose password is lost.
/// </summary>
/// <remarks>Whoever may write the data folder may do this; the password is read from standard input.</remarks>
internal static class AdministratorCommand
{
    public const string Word = "administrator";

    /// <summary>
    /// Sets the first administrator up, or gives an existing person the role and a new password. 0 when done, 1 when refused.
    /// </summary>
    public static async Task<int> RunAsync(IServiceProvider services, string name)
    {
        await services.GetRequiredService<WearStore>().PrepareAsync();
        await using var scope = services.CreateAsyncScope();
        var desk = scope.ServiceProvider.GetRequiredService<PeopleDesk>();
        var person = await scope.ServiceProvider.GetRequiredService<UserManager<PersonRow>>().FindByNameAsync(name);
        await Console.Error.WriteLineAsync($"New password for {name}, 10 characters or more:");
        var password = await Console.In.ReadLineAsync() ?? "";
        var fault = person is not null
            ? await RestoreAsync(scope.ServiceProvider, person, password)
            : await services.GetRequiredService<SetUp>().IsDoneAsync()
                ? Phrase.Of($"Nobody is called '{name}'. An administrator adds people on the page People.")
                : (await desk.AddFirstAsync(name, password)).Fault;
        await Console.Error.WriteLineAsync(
            fault?.ToString() ?? $"{name} administers WearWatch and can sign in with this password.");
        return fault is null ? 0 : 1;
    }

    private static async Task<Phrase?> RestoreAsync(IServiceProvider services, PersonRow person, string password)
    {
        var desk = services.GetRequiredService<PeopleDesk>();
        await services.GetRequiredService<CompanyDesk>().DisconnectAsync(person);
        return await desk.ResetPasswordAsync(person, password, mustChoose: false)
            ?? await desk.SwitchAsync(person, off: false)
            ?? await desk.GiveRolesAsync(person, person.Roles | PersonRoles.Administrator);
    }
}
