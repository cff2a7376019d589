namespace WearWatch.Plant.Files;

/// <summary>What stands in a column.</summary>
public enum ColumnKind
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A whole number of up to 64 bits.</summary>
    Whole,

    /// <summary>A number in double precision.</summary>
    Number,

    /// <summary>A moment, in UTC.</summary>
    Moment,

    /// <summary>Yes or no.</summary>
    YesNo,
}
