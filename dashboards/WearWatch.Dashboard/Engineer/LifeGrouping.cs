namespace WearWatch.Dashboard.Engineer;

/// <summary>By what chains are told apart.</summary>
public enum LifeGrouping
{
    All,
    Type,
    Line,
    Lubrication,
    Dust,
    Load,
    Family,
    Lot,
}
