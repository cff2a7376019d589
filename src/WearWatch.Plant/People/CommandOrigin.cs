namespace WearWatch.Plant.People;

/// <summary>The origin of what this machine's command line or the program itself does.</summary>
internal sealed class CommandOrigin : IOrigin
{
    /// <inheritdoc/>
    public string Who => "this machine";

    /// <inheritdoc/>
    public string Address => "";
}
