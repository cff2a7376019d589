using System.Globalization;
using System.Text.Json;
using WearWatch.Phrases;

namespace WearWatch.Tests.Phrases;

/// <summary>A phrase is kept and read back as what it says, not as who said it.</summary>
public sealed class PhraseTests
{
    [Fact]
    public void Phrases_that_say_the_same_are_equal_whatever_the_code_calls_their_facts()
    {
        var (left, right, whole) = (2.0, 2, 2m);
        Phrase one = $"{left:0.0} mm of take-up left", other = $"{right:0.0} mm of take-up left",
            third = $"{whole:0.0} mm of take-up left", more = $"{left + 1:0.0} mm of take-up left";
        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), third.GetHashCode());
        Assert.NotEqual(one, more);
    }

    [Fact]
    public void A_text_that_is_data_is_not_the_sentence_of_the_same_words() =>
        Assert.NotEqual(Phrase.Of($"Replace the chain."), Phrase.Verbatim("Replace the chain."));

    [Fact]
    public void What_is_kept_is_said_in_another_language_when_it_is_read_back()
    {
        var (share, day, name) = (0.051, new DateOnly(2027, 1, 14), "K-12 {a}");
        Phrase why = $"{name}: the limit is passed with {share:0.0} % from {day} on, {Phrase.Of($"{3:#,0} pitches")}";
        var back = PhraseText.Read(PhraseText.Of(why));
        Assert.Equal(why, back);
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        Assert.Equal(
            "K-12 {a}: 0,1 % ab 14 Jan 2027, 3 Teilungen",
            back.In(form => form switch
            {
                "{0}: the limit is passed with {1} % from {2} on, {3}" => "{0}: {1} % ab {2}, {3}",
                "{0} pitches" => "{0} Teilungen",
                _ => form,
            }, comma));
    }

    [Fact]
    public void A_sentence_that_was_kept_before_phrases_is_shown_as_it_was_written()
    {
        Assert.Equal("Measure again {soon}.", PhraseText.Read("Measure again {soon}.").ToString());
        Assert.Equal(Phrase.Of($"Measure again."), PhraseText.Read("Measure again."));
        Assert.Same(Phrase.None, PhraseText.Read(""));
    }

    [Fact]
    public void An_answer_has_form_facts_and_sentence()
    {
        var hours = 1250.5;
        Phrase far = $"{hours:#,0.0} h left";
        var options = new JsonSerializerOptions { Converters = { new PhraseConverter(p => p.ToString()) } };
        Assert.Equal(
            """{"form":"{0} h left","facts":[{"name":"hours","number":1250.5,"format":"#,0.0"}],"sentence":"1,250.5 h left"}""",
            JsonSerializer.Serialize(far, options));
        Assert.Equal(far, JsonSerializer.Deserialize<Phrase>(JsonSerializer.Serialize(far, options), options));
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Phrase>("\"far\"", options));
    }
}
