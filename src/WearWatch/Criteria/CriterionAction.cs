namespace WearWatch.Criteria;

/// <summary>What a criterion of a chain that lifts or holds a load asks for.</summary>
public enum CriterionAction
{
    /// <summary>Out of use at once.</summary>
    OutOfUse,

    /// <summary>Replaced before it is used again.</summary>
    Replace,

    /// <summary>A competent person sets a date.</summary>
    Plan,

    /// <summary>A competent person looks at it.</summary>
    Investigate,

    /// <summary>Never done.</summary>
    Forbidden,

    /// <summary>How it is measured, oiled or fitted.</summary>
    Method,

    /// <summary>When it is looked at.</summary>
    Interval,

    /// <summary>How many times its load it bears when new.</summary>
    Factor,

    /// <summary>What is written down and kept.</summary>
    Record,

    /// <summary>What a competent person is.</summary>
    Person,

    /// <summary>How it is disposed of.</summary>
    Dispose,

    /// <summary>Something to know.</summary>
    Info,

    /// <summary>One maker's table, to compare with; never a default.</summary>
    Example,
}
