using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Nodes;
using WearWatch.Chains;
using WearWatch.Dashboard.Administration.Register;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Files;
using WearWatch.Plant.Register;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Register;

/// <summary>
/// A field of the card that is in the list is in the file, the record of changes, the history, the API and the form.
/// </summary>
public sealed class CardFieldTests : IAsyncLifetime
{
    private static readonly ChainCard plain = new() { Name = "K-8", PitchMm = 25.4 };

    /// <summary>Fields that hang together: three links of 5x15 over outer edges measure 55 mm when new.</summary>
    private static readonly Dictionary<string, string> ofOneChain = new()
    {
        ["family"] = "round_link",
        ["pitch_mm"] = "15",
        ["link_diameter_mm"] = "5",
        ["link_one_limit_mm"] = "15.7",
        ["link_several_limit_mm"] = "56.5",
        ["link_diameter_limit_mm"] = "4.5",
        ["link_unused_several_mm"] = "55.2",
    };

    /// <summary>A card that tells every field otherwise than a plain one.</summary>
    private static readonly ChainCard full = CardText.Read(
        ChainColumns.Fields.ToDictionary(c => c.Name, Sample).Append(new("chain", "K-8")).ToDictionary(),
        TimeZoneInfo.Utc).Card!;

    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public void The_file_has_the_agreed_columns_first_and_in_the_agreed_order() =>
        Assert.StartsWith(
            "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct,load_rel,speed_m_s,"
            + "lubrication,dust,family,sprocket_teeth,lot,limit_set_reason,strands,fixed_centres,runs_in_parallel,timing,"
            + "positioning,high_performance,lifts,",
            string.Join(',', FileColumns.Chains.All), StringComparison.Ordinal);

    [Fact]
    public void The_file_and_the_form_have_every_field_once()
    {
        var names = ChainColumns.Fields.Select(c => c.Name).Prepend("chain").Order().ToList();
        Assert.Equal(names, FileColumns.Chains.All.Order());
        Assert.Equal(names, CardField.Groups.SelectMany(g => g.Fields).Select(f => f.Column.Name).Order());
        Assert.DoesNotContain("", ChainColumns.Fields.SelectMany(c => new[] { c.Meaning, c.Asked!.Name.Form }));
    }

    [Fact]
    public void Each_field_tells_a_change_and_survives_text_and_row()
    {
        Assert.Equal(ChainColumns.All.Select(c => c.Name), CardChanges.Between(plain, full).Select(c => c.Field));
        Assert.Empty(CardChanges.Between(full, CardText.Read(CardText.Write(full), TimeZoneInfo.Utc).Card!));
        Assert.Empty(CardChanges.Between(full, RowOf(full).ToCard()));
    }

    [Fact]
    public void The_form_shows_every_field_and_gives_it_back_as_it_was()
    {
        var form = CardForm.Of(RowOf(full), A.Time());
        Assert.All(ChainColumns.Fields, c => Assert.NotEqual("", form[c.Name]));
        Assert.Empty(CardChanges.Between(full, form.ToSave()!));
        var empty = CardForm.New(A.Time());
        empty["chain"] = full.Name;
        foreach (var column in ChainColumns.Fields) empty[column.Name] = form[column.Name];
        Assert.Empty(CardChanges.Between(full, empty.ToSave()!));
    }

    [Fact]
    public void The_history_has_every_field_with_its_meaning() =>
        Assert.Equal(
            ChainColumns.Fields.Select(c => new HistoryColumn(c.Name, c.Kind, $"{c.Meaning}")),
            host.Get<HistoryTables>().Of("chains")!.Columns.Skip(2));

    [Fact]
    public async Task The_API_sends_every_field_and_takes_it_back()
    {
        using var client = host.CreateClient();
        await host.Get<RegisterDesk>().AddAsync(full, "Vera", ct: Ct);
        var sent = (await client.GetFromJsonAsync<JsonObject>("/api/v1/chains/K-8/master-data", Ct))!;
        Assert.Equal(
            [.. ChainColumns.Fields.Select(c => c.Name), "revision", "by", "why"], sent.Select(p => p.Key));
        Assert.All(ChainColumns.Fields, c => Assert.NotNull(sent[c.Name]));
        var read = (await client.GetFromJsonAsync<JsonObject>("/api/v1/chains/K-8", Ct))!;
        Assert.Equal(["chain", .. ChainColumns.Fields.Select(c => c.Name), "lifting"], read.Select(p => p.Key));

        sent.Remove("revision");
        using var request = new HttpRequestMessage(HttpMethod.Put, "/api/v1/chains/K-9/master-data");
        request.Content = JsonContent.Create(sent);
        request.Headers.Add("Idempotency-Key", "full-card");
        Assert.Equal(HttpStatusCode.Created, (await client.SendAsync(request, Ct)).StatusCode);
        await using var db = await host.OpenAsync();
        Assert.Empty(CardChanges.Between(full, db.Chains.Single(c => c.Name == "K-9").ToCard()));
    }

    [Fact]
    public async Task Numbers_moments_and_teeth_are_not_sent_as_text()
    {
        using var client = host.CreateClient();
        await host.Get<RegisterDesk>().AddAsync(full, "Vera", ct: Ct);
        var sent = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-8/master-data", Ct);
        Assert.All(ChainColumns.Fields, c => Assert.Equal(
            c.IsList ? JsonValueKind.Array : c.Kind switch
            {
                ColumnKind.YesNo => JsonValueKind.True,
                ColumnKind.Number or ColumnKind.Whole => JsonValueKind.Number,
                _ => JsonValueKind.String,
            }, sent.GetProperty(c.Name).ValueKind));
    }

    private static string Sample(FileColumn<ChainCard> column) =>
        ofOneChain.TryGetValue(column.Name, out var one) ? one
        : column.Asked!.Choices is [.., var last] ? last.Word
        : column.IsList ? "17 75"
        : column.Name == "limit_pct" ? "0.4" // of a chain that lifts a limit of one's own is at most that of the rules
        : column.Kind switch
        {
            ColumnKind.Whole => "3",
            ColumnKind.Number => "1.5",
            ColumnKind.Moment => "2026-01-02T03:04:00Z",
            ColumnKind.YesNo => "yes",
            _ => "B-" + column.Name,
        };

    private static ChainRow RowOf(ChainCard card)
    {
        var row = new ChainRow { Name = card.Name };
        row.Take(card);
        return row;
    }
}
