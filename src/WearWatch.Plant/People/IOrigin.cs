namespace WearWatch.Plant.People;

/// <summary>Who asks right now and from where, for the security log.</summary>
public interface IOrigin
{
    /// <summary>The person or key; empty for somebody unknown.</summary>
    string Who { get; }

    /// <summary>The network address; empty where there is none.</summary>
    string Address { get; }
}
