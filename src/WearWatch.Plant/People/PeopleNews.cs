namespace WearWatch.Plant.People;

/// <summary>Tells open pages of this process that somebody's rights changed, so that they do not go on with old ones.</summary>
public sealed class PeopleNews
{
    /// <summary>Raised after the change is committed.</summary>
    public event Action? Changed;

    /// <summary>Tells all open pages.</summary>
    public void Tell() => Changed?.Invoke();
}
