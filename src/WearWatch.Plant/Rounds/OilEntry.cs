namespace WearWatch.Plant.Rounds;

/// <summary>How it is recorded on the floor that the lubrication of a chain is done.</summary>
public enum OilEntry
{
    /// <summary>At once, by one tap: oiled by hand, with what is usual there.</summary>
    Tap,

    /// <summary>By the form of a lubrication: there is something to read or to choose first.</summary>
    Form,

    /// <summary>By an inspection: an automatic lubricator does the work, and a person sees that it does.</summary>
    Inspection,
}
