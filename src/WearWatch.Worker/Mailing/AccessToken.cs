using System.Net.Http.Json;
using System.Text.Json.Serialization;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Mailing;

namespace WearWatch.Worker.Mailing;

/// <summary>The token by which a mail server lets this program in, asked for anew before it ends.</summary>
/// <remarks>OAuth 2.0, grant of client credentials: RFC 6749, 4.4 and 5.1.</remarks>
public sealed class AccessToken(IOptions<MailOptions> options, TimeProvider clock) : IDisposable
{
    private static readonly TimeSpan Before = TimeSpan.FromMinutes(1);
    private readonly HttpClient http = new() { Timeout = TimeSpan.FromSeconds(30) };
    private string text = "";
    private DateTimeOffset endsAt;

    /// <summary>The token.</summary>
    /// <exception cref="HttpRequestException">The server of tokens is away, or gives none.</exception>
    public async Task<string> AskAsync(CancellationToken ct)
    {
        if (clock.GetUtcNow() < endsAt - Before) return text;
        var asked = options.Value;
        using var form = new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["grant_type"] = "client_credentials",
            ["client_id"] = asked.ClientId,
            ["client_secret"] = asked.ClientSecret,
            ["scope"] = asked.Scope,
        });
        using var answer = await http.PostAsync(new Uri(asked.TokenUrl), form, ct);
        answer.EnsureSuccessStatusCode();
        var given = await answer.Content.ReadFromJsonAsync<Given>(ct);
        if (given?.Token is not { Length: > 0 } token) throw new HttpRequestException("The server of tokens gave none.");
        (text, endsAt) = (token, clock.GetUtcNow() + TimeSpan.FromSeconds(given.Seconds));
        return text;
    }

    public void Dispose() => http.Dispose();

    private sealed record Given(
        [property: JsonPropertyName("access_token")] string? Token, [property: JsonPropertyName("expires_in")] int Seconds);
}
