using Microsoft.AspNetCore.Components;

namespace WearWatch.Dashboard.Kit.Tables;

/// <summary>A table that a person sorts by its heads; its page draws it again when its address changes.</summary>
public abstract class SortedTable : ComponentBase
{
    /// <summary>The table's name in the address; a page with several gives each its own.</summary>
    [Parameter]
    public string Table { get; set; } = "table";

    /// <summary>By what it is sorted now.</summary>
    protected TableSort Sort => TableSort.Of(new Uri(Navigation.Uri).Query, Table);

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;
}
