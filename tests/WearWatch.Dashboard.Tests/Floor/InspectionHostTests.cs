using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Floor;

public sealed class InspectionHostTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();
    private HttpClient client = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>The smallest file that is a picture by its segments: start, a frame of 8 x 8, a scan, end.</summary>
    private static readonly byte[] Jpeg =
        [0xFF, 0xD8, 0xFF, 0xE1, 0, 6, 71, 80, 83, 33, 0xFF, 0xC0, 0, 11, 8, 0, 8, 0, 8, 1, 1, 0x11, 0, 0xFF, 0xDA, 0, 4, 1, 1, 7,
            0xFF, 0xD9];

    public async ValueTask InitializeAsync()
    {
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
        client = host.CreateClient();
    }

    public ValueTask DisposeAsync()
    {
        client.Dispose();
        return host.DisposeAsync();
    }

    [Fact]
    public async Task A_finding_becomes_a_notice_with_advice_and_ends_when_the_point_is_in_order_again()
    {
        Assert.Equal(HttpStatusCode.Created, (await LookAsync("look-1", 1, ("dry_joints", true), ("sag", false))).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await LookAsync("look-1", 1, ("dry_joints", true), ("sag", false))).StatusCode);
        Assert.Equal(HttpStatusCode.Conflict, (await LookAsync("look-1", 1, ("dry_joints", false), ("sag", false))).StatusCode);
        var notice = Assert.Single(await NoticesAsync());
        Assert.Contains("red-brown", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("oil now", notice.WhatToDo.ToString(), StringComparison.Ordinal);
        Assert.Null(notice.EndedAt);
        await LookAsync("look-2", 2, ("dry_joints", false));
        Assert.NotNull(Assert.Single(await NoticesAsync()).EndedAt);
        // A look is an event, too: the next is due a month later.
        var events = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-1/events", Ct);
        Assert.Equal(2, events.EnumerateArray().Count(e => e.GetProperty("event").GetString() == "inspection"));
    }

    [Fact]
    public async Task A_look_without_a_moment_is_of_now_and_stored_once_however_often_it_is_sent()
    {
        Assert.Equal([HttpStatusCode.Created, HttpStatusCode.OK], [await SendAsync(), await SendAsync()]);
        await using var db = await host.OpenAsync();
        Assert.Equal(1, await db.Looks.CountAsync(Ct));

        async Task<HttpStatusCode> SendAsync()
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/inspections")
            {
                Content = JsonContent.Create(new { chain = "K-1", findings = new[] { new { point = "sag", found = false } } }),
            };
            request.Headers.Add("Idempotency-Key", "look-now");
            return (await client.SendAsync(request, Ct)).StatusCode;
        }
    }

    [Fact]
    public async Task A_photo_is_kept_once_without_what_the_camera_wrote_and_goes_out_as_a_picture_only()
    {
        await LookAsync("look-1", 1, ("hooked_teeth", true));
        var taken = await PhotoAsync("photo-1", "look-1", "hooked_teeth", Jpeg);
        Assert.Equal(HttpStatusCode.Created, taken.StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await PhotoAsync("photo-1", "look-1", "hooked_teeth", Jpeg)).StatusCode);
        var looks = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-1/inspections", Ct);
        var id = looks[0].GetProperty("findings")[0].GetProperty("photos")[0].GetInt64();
        var answer = await client.GetAsync($"/api/v1/photos/{id}", Ct);
        Assert.Equal("image/jpeg", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Contains("sandbox", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        var kept = await answer.Content.ReadAsByteArrayAsync(Ct);
        Assert.Equal(Jpeg.Length - 8, kept.Length); // the segment with the camera's notes is gone
    }

    [Theory]
    [InlineData("look-1", "hooked_teeth", true, HttpStatusCode.UnprocessableEntity)] // no picture
    [InlineData("nowhere", "hooked_teeth", false, HttpStatusCode.UnprocessableEntity)]
    [InlineData("look-1", "sag", false, HttpStatusCode.UnprocessableEntity)] // that look says nothing of the sag
    [InlineData("look-1", "paint", false, HttpStatusCode.UnprocessableEntity)]
    public async Task A_photo_that_is_none_or_belongs_nowhere_is_refused(
        string look, string point, bool nonsense, HttpStatusCode expected)
    {
        await LookAsync("look-1", 1, ("hooked_teeth", true));
        Assert.Equal(
            expected, (await PhotoAsync("p", look, point, nonsense ? "<svg onload=alert(1)>"u8.ToArray() : Jpeg)).StatusCode);
        await using var db = await host.OpenAsync();
        Assert.False(await db.Photos.AnyAsync(Ct));
    }

    [Fact]
    public async Task A_look_that_cannot_be_is_refused_and_nothing_is_stored()
    {
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await LookAsync("l", 1)).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await LookAsync("l", 1, ("paint", true))).StatusCode);
        // a roller chain has none
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await LookAsync("l", 1, ("link_contact", true))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await LookAsync("l", 1, ("sag", true), ("sag", false))).StatusCode);
        await using var db = await host.OpenAsync();
        Assert.False(await db.Looks.AnyAsync(Ct));
    }

    [Fact]
    public async Task Hooked_teeth_stay_with_a_new_chain_and_go_with_a_new_wheel()
    {
        await LookAsync("look-1", 1, ("hooked_teeth", true), ("corrosion", true));
        await HappenAsync("swap", "replacement", 2);
        Assert.DoesNotContain("Rust", Assert.Single(await NoticesAsync()).Why.ToString(), StringComparison.Ordinal);
        await HappenAsync("wheel", "sprocket_replaced", 3);
        Assert.NotNull(Assert.Single(await NoticesAsync()).EndedAt);
    }

    private async Task<List<Storage.Rows.NoticeRow>> NoticesAsync()
    {
        await using var db = await host.OpenAsync();
        return await db.Notices.AsNoTracking().Where(n => n.Kind == NoticeKind.FoundByLook).ToListAsync(Ct);
    }

    private Task<HttpResponseMessage> LookAsync(string key, int day, params (string Point, bool Found)[] findings) => SendAsync(
        "/api/v1/inspections", key, JsonContent.Create(new
        {
            chain = "K-1",
            taken_at = new DateTimeOffset(2026, 5, day, 8, 0, 0, TimeSpan.Zero),
            findings = findings.Select(f => new { point = f.Point, found = f.Found, note = "" }),
        }));

    private Task<HttpResponseMessage> HappenAsync(string key, string kind, int day) => SendAsync(
        "/api/v1/events", key, JsonContent.Create(
            new { chain = "K-1", @event = kind, taken_at = new DateTimeOffset(2026, 5, day, 8, 0, 0, TimeSpan.Zero) }));

    private Task<HttpResponseMessage> PhotoAsync(string key, string look, string point, byte[] file)
    {
        var content = new ByteArrayContent(file);
        content.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");
        return SendAsync($"/api/v1/inspections/{look}/photos/{point}", key, content);
    }

    private async Task<HttpResponseMessage> SendAsync(string path, string key, HttpContent content)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = content };
        request.Headers.Add("Idempotency-Key", key);
        return await client.SendAsync(request, Ct);
    }
}
