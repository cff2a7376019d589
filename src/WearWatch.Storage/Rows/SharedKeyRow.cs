namespace WearWatch.Storage.Rows;

/// <summary>A key with which the dashboards protect cookies and forms; all dashboards of a plant have the same.</summary>
public sealed class SharedKeyRow
{
    public int Id { get; init; }

    public required string Name { get; init; }

    /// <summary>The key as XML. Whoever can read the database can read it.</summary>
    public required string Xml { get; init; }
}
