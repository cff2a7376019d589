using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Lets an open page act only while its session stands, and makes it hear of it when somebody's rights change.</summary>
internal sealed class RightsListener(AuthenticationStateProvider person) : CircuitHandler
{
    private readonly PagePerson person = (PagePerson)person;

    public override Task OnCircuitOpenedAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        person.Listen();
        return Task.CompletedTask;
    }

    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(
        Func<CircuitInboundActivityContext, Task> next) => async activity =>
        {
            if (await person.MayGoOnAsync()) await next(activity);
        };
}
