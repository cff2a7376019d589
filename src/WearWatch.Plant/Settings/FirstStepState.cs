namespace WearWatch.Plant.Settings;

/// <summary>How far a first step is.</summary>
/// <param name="Step">The step.</param>
/// <param name="Done">How much of it is entered.</param>
/// <param name="Of">How much there is to enter; 1 for a step that is entered or not.</param>
/// <param name="IsSkipped">Whether a person has left it out.</param>
public sealed record FirstStepState(FirstStep Step, int Done, int Of, bool IsSkipped)
{
    /// <summary>Whether all of it is entered.</summary>
    public bool IsDone => Of > 0 && Done >= Of;

    /// <summary>Whether it still asks for somebody.</summary>
    public bool IsOpen => !IsDone && !IsSkipped;
}
