using System.Text;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>A reader of iCalendar written from the text of RFC 5545, which shares nothing with the library that writes.</summary>
internal static class Rfc5545
{
    /// <summary>The properties of each event, by name; throws when a rule of the standard is broken.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> EventsOf(string text)
    {
        Assert.True(text.EndsWith("\r\n", StringComparison.Ordinal), "3.1: lines end with CRLF");
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"),
            line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, "3.1: at most 75 octets a line"));
        var (open, events, calendar) =
            (new Stack<string>(), new List<IReadOnlyDictionary<string, string>>(), new Dictionary<string, string>());
        Dictionary<string, string>? current = null;
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal)
            .Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            Assert.True(colon > 0, "3.1: name, colon, value");
            var (name, value) = (line[..colon].Split(';')[0], line[(colon + 1)..]);
            Assert.All(name, c => Assert.True(c is (>= 'A' and <= 'Z') or '-' or (>= '0' and <= '9')));
            if (name == "BEGIN") open.Push(value);
            if (name == "BEGIN" && value == "VEVENT") current = [];
            else if (name == "END") Close(value);
            else if (name != "BEGIN" && current is not null) Assert.True(current.TryAdd(name, value), $"{name} may stand once");
            else if (name != "BEGIN") calendar[name] = value;
        }

        Assert.Empty(open);
        Assert.Equal("2.0", calendar["VERSION"]); // 3.7.4
        Assert.NotEmpty(calendar["PRODID"]); // 3.7.3
        Assert.Equal(events.Count, events.Select(e => e["UID"]).Distinct().Count()); // 3.8.4.7
        return events;

        void Close(string what)
        {
            Assert.Equal(open.Pop(), what);
            if (what != "VEVENT") return;
            Assert.All(["UID", "DTSTAMP", "DTSTART"], required => Assert.NotEmpty(current![required])); // 3.6.1
            // 3.3.5, form 2
            Assert.All(["DTSTAMP", "DTSTART", "DTEND"], moment => Assert.Matches("^[0-9]{8}T[0-9]{6}Z$", current![moment]));
            events.Add(current!);
            current = null;
        }
    }
}
