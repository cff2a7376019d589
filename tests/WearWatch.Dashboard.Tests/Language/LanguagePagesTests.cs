using WearWatch.Dashboard.Tests.Shell;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Every page in each language is read at one glance, as in English (EveryAddressTests).</summary>
public sealed class LanguagePagesTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public static TheoryData<string> Foreign => LanguageTests.Foreign;

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task Headings_buttons_notices_and_paragraphs_are_short(string code)
    {
        List<string> faults = [];
        foreach (var route in EveryAddressTests.Pages.Select(row => row.Data))
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, EveryAddressTests.AddressOf(mill, route));
            request.Headers.Add("Accept-Language", code);
            using var answer = await mill.Client.SendAsync(request, Ct);
            var html = await answer.Content.ReadAsStringAsync(Ct);
            Assert.Contains($"lang=\"{code}\"", html, StringComparison.Ordinal);
            faults.AddRange(ReadingRules.Faults(html).Select(fault => $"{route}: {fault}"));
        }

        var found = faults.DistinctBy(fault => fault[(fault.IndexOf(':', StringComparison.Ordinal) + 1)..]).ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, $"long-{code}.txt"), found);
        Assert.True(found.Count == 0, string.Join('\n', found));
    }
}
