using System.Diagnostics;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Overview.FirstDays;

/// <summary>The first steps of a plant in words, with the page on which each is entered.</summary>
public static class FirstDayWords
{
    public static string Name(FirstStep step) => step switch
    {
        FirstStep.Zone => T["Time zone"],
        FirstStep.Shifts => T["Shifts"],
        FirstStep.Chains => T["Chains"],
        FirstStep.People => T["People"],
        FirstStep.Shutdowns => T["Planned shutdowns"],
        FirstStep.Spares => T["Spares"],
        FirstStep.FirstRound => T["First round"],
        _ => throw new UnreachableException($"Step {step} has no words."),
    };

    /// <summary>What a step is good for.</summary>
    public static string Why(FirstStep step) => step switch
    {
        FirstStep.Zone => T["Dates and shifts follow it. Leave it out for a plant that goes by UTC."],
        FirstStep.Shifts => T["Running hours become dates. Leave it out for a plant that runs round the clock."],
        FirstStep.Chains => T["The register: from a spreadsheet, or one by one."],
        FirstStep.People => T["Who measures, plans and studies. Until then this machine alone has access."],
        FirstStep.Shutdowns => T["A swap needs a time when its line stands still."],
        FirstStep.Spares => T["The plan counts on what is in the store and how long parts take to come."],
        FirstStep.FirstRound => T["Measure every chain once: a forecast rests on readings."],
        _ => throw new UnreachableException($"Step {step} has no words."),
    };

    /// <summary>What of it is still missing.</summary>
    public static Phrase State(FirstStepState step) => step switch
    {
        { IsDone: true } => $"done",
        { IsSkipped: true } => $"left out",
        { Step: FirstStep.Shutdowns, Of: > 0 } => $"{step.Of - step.Done} of {step.Of} lines have none",
        { Step: FirstStep.Spares, Of: > 0 } => $"{step.Of - step.Done} of {step.Of} chain types have no record",
        { Step: FirstStep.FirstRound, Of: > 0 } => $"{step.Of - step.Done} of {step.Of} chains were never measured",
        _ => $"missing",
    };

    public static string Action(FirstStep step) => step switch
    {
        FirstStep.Zone or FirstStep.Shifts => T["To the settings"],
        FirstStep.Chains => T["Import or add chains"],
        FirstStep.People => T["To the people"],
        FirstStep.Shutdowns => T["Enter shutdowns"],
        FirstStep.Spares => T["Enter spares"],
        FirstStep.FirstRound => T["To today's rounds"],
        _ => throw new UnreachableException($"Step {step} has no page."),
    };

    public static string Address(FirstStep step) => step switch
    {
        FirstStep.Zone or FirstStep.Shifts => "/settings",
        FirstStep.Chains => "/import",
        FirstStep.People => "/people",
        FirstStep.Shutdowns => "/plan/inputs",
        FirstStep.Spares => "/plan/inputs?part=spares",
        FirstStep.FirstRound => "/rounds",
        _ => throw new UnreachableException($"Step {step} has no page."),
    };
}
