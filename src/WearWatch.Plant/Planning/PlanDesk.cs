using WearWatch.Planning.Plans;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Planning;

/// <summary>The swap plan for programs, the command line and the API: what a person does at the board, in single steps.</summary>
public sealed class PlanDesk(PlanQuery query, PlanKeeping keeping)
{
    /// <summary>The saved plan, as it stands now.</summary>
    public async Task<PlanDraft> ShowAsync(CancellationToken ct) => new(await query.AskAsync(ct));

    /// <summary>Proposes a plan. What a person placed or locked stays where it is; nothing is kept.</summary>
    /// <param name="whatIf">Other circumstances to plan under; what is proposed under them cannot be kept.</param>
    /// <param name="progress">Hears how far it is.</param>
    /// <param name="stop">Ends the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task<PlanAnswer> ProposeAsync(WhatIf whatIf, IProgress<PlanStage>? progress, CancellationToken stop)
    {
        if (whatIf.Faults is { Count: > 0 } faults) return new PlanAnswer.Refused(faults);
        var picture = await query.AskAsync(stop, whatIf.Weeks);
        if (whatIf.WindowId.Length > 0 && picture.Input.Windows.All(w => w.Id != whatIf.WindowId))
        {
            return new PlanAnswer.Refused(
                [new Refusal("shutdown", $"No shutdown '{whatIf.WindowId}' is planned within the horizon.")]);
        }

        var draft = new PlanDraft(picture);
        if (!whatIf.IsReal) draft.Suppose(whatIf);
        await draft.ProposeAsync(progress, stop);
        return new PlanAnswer.Planned(draft, 0);
    }

    /// <summary>Keeps a plan that a program tells. All of it is kept or nothing; told again, it changes nothing.</summary>
    /// <param name="told">Where the swaps stand; chains that it does not name stay as they are.</param>
    /// <param name="by">Who decides so.</param>
    /// <param name="ct">Ends it.</param>
    public async Task<PlanAnswer> SaveAsync(PlanEntryJson told, string by, CancellationToken ct)
    {
        var draft = await ShowAsync(ct);
        var (places, faults) = PlanCheck.Read(draft, told);
        if (faults.Count > 0) return new PlanAnswer.Refused(faults);
        draft.Place(places);
        if (draft.IsChanged && told.Revision != draft.Picture.Revision)
            return new PlanAnswer.Overtaken(draft.Picture.Revision);
        return await keeping.KeepAsync(draft, by, ct) is var answer && answer is PlanAnswer.Planned kept
            ? kept with { Draft = await ShowAsync(ct) }
            : answer;
    }
}
