using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Engineer.Workbench;

/// <summary>A calculator whose fields stand in its address: each change of the address works it out anew.</summary>
public abstract class BenchPage : ComponentBase, IDisposable
{
    /// <summary>The units in which this person reads and writes.</summary>
    [CascadingParameter]
    public UnitPreference Units { get; set; } = UnitPreference.Si;

    /// <summary>What the fields share.</summary>
    protected BenchForm Form { get; private set; } = default!;

    [Inject]
    private NavigationManager Address { get; set; } = default!;

    /// <summary>Works out what the address asks.</summary>
    /// <returns>What is wrong with it.</returns>
    protected abstract IReadOnlyList<Refusal> Answer(BenchAddress address);

    /// <summary>Changes what is asked on its way into the address.</summary>
    protected virtual BenchAddress Completed(BenchAddress address) => address;

    protected override void OnInitialized() => Address.LocationChanged += Moved;

    protected override void OnParametersSet() => Read();

    /// <summary>Takes what a person changed into the address; a calculation is one step of the browser's history.</summary>
    protected void Go(BenchAddress changed) =>
        Address.NavigateTo(Completed(changed).ToString(), new NavigationOptions { ReplaceHistoryEntry = true });

    public void Dispose()
    {
        Address.LocationChanged -= Moved;
        GC.SuppressFinalize(this);
    }

    // The router draws a page of the same route no second time when only the query changes.
    private void Moved(object? sender, LocationChangedEventArgs e)
    {
        if (BenchAddress.Of(e.Location).Path != Form.Address.Path) return;
        Read();
        _ = InvokeAsync(StateHasChanged);
    }

    private void Read()
    {
        var address = BenchAddress.Of(Address.Uri);
        Form = new BenchForm(address, Answer(address), Units, Go);
    }
}
