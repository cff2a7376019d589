using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Makes a page that stays open hear of it when somebody's rights change.</summary>
internal sealed class RightsListener(AuthenticationStateProvider person) : CircuitHandler
{
    public override Task OnCircuitOpenedAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        ((PagePerson)person).Listen();
        return Task.CompletedTask;
    }
}
