using System.Text.Json;
using WearWatch.Plant.JsonPaths;

namespace WearWatch.Worker.Tests.Mappings;

/// <summary>The examples of RFC 9535 (docs/references.md), from memory, and what it refuses.</summary>
public sealed class JsonPathTests
{
    private const string Store = """
        {"store":{"book":[
          {"category":"reference","author":"Nigel Rees","title":"Sayings of the Century","price":8.95},
          {"category":"fiction","author":"Evelyn Waugh","title":"Sword of Honour","price":12.99},
          {"category":"fiction","author":"Herman Melville","title":"Moby Dick","isbn":"0-553-21311-3","price":8.99},
          {"category":"fiction","author":"J. R. R. Tolkien","title":"The Lord of the Rings","isbn":"0-395-19395-8",
           "price":22.99}],
        "bicycle":{"color":"red","price":399}}}
        """;

    private const string Obj = """{"obj":{"x":"y"},"arr":[2,3]}""";
    private const string Filtered = """
        {"a":[3,5,1,2,4,6,{"b":"j"},{"b":"k"},{"b":{}},{"b":"kilo"}],"o":{"p":1,"q":2,"r":3,"s":5,"t":{"u":6}},"e":"f"}
        """;

    [Theory]
    [InlineData("$.store.book[*].author", 4, "\"Nigel Rees\"")]
    [InlineData("$..author", 4, "\"Nigel Rees\"")]
    [InlineData("$.store.*", 2, null)]
    [InlineData("$.store..price", 5, null)]
    [InlineData("$..book[2].title", 1, "\"Moby Dick\"")]
    [InlineData("$..book[2].publisher", 0, null)]
    [InlineData("$..book[-1].title", 1, "\"The Lord of the Rings\"")]
    [InlineData("$..book[0,1].title", 2, "\"Sayings of the Century\"")]
    [InlineData("$..book[:2].title", 2, "\"Sayings of the Century\"")]
    [InlineData("$..book[?@.isbn].title", 2, "\"Moby Dick\"")]
    [InlineData("$..book[?@.price<10].title", 2, "\"Sayings of the Century\"")]
    [InlineData("$..*", 27, null)]
    [InlineData("$['store']['bicycle'][\"color\"]", 1, "\"red\"")]
    [InlineData("$.store.book[?length(@.author) > 12].price", 2, "8.99")]
    [InlineData("$.store.book[?count(@.*) == 4].price", 2, "8.95")]
    [InlineData("$.store.book[?match(@.isbn, '0-5.*')].price", 1, "8.99")]
    [InlineData("$.store.book[?search(@.author, '[JR]\\\\.')].price", 1, "22.99")]
    [InlineData("$.store.book[?value(@..isbn) == '0-553-21311-3'].price", 1, "8.99")]
    public void The_store_answers_as_the_standard_says(string path, int count, string? first) => Check(Store, path, count, first);

    [Theory]
    [InlineData("$.a[?@.b == 'kilo']", 1, """{"b":"kilo"}""")]
    [InlineData("$.a[?(@.b == 'kilo')]", 1, """{"b":"kilo"}""")]
    [InlineData("$.a[?@>3.5]", 3, "5")]
    [InlineData("$.a[?@.b]", 4, """{"b":"j"}""")]
    [InlineData("$[?@.*]", 2, null)]
    [InlineData("$[?@[?@.b]]", 1, null)]
    [InlineData("$.o[?@<3, ?@<3]", 4, "1")]
    [InlineData("$.a[?@<2 || @.b == \"k\"]", 2, "1")]
    [InlineData("$.a[?match(@.b, \"[jk]\")]", 2, """{"b":"j"}""")]
    [InlineData("$.a[?search(@.b, \"[jk]\")]", 3, """{"b":"j"}""")]
    [InlineData("$.o[?@>1 && @<4]", 2, "2")]
    [InlineData("$.o[?@.u || @.x]", 1, """{"u":6}""")]
    [InlineData("$.a[?@.b == $.x]", 6, "3")]
    [InlineData("$.a[?@ == @]", 10, "3")]
    [InlineData("$.a[?!@.b]", 6, "3")]
    public void Filters_answer_as_the_standard_says(string path, int count, string? first) => Check(Filtered, path, count, first);

    [Theory]
    [InlineData("$[?$.absent1 == $.absent2]", 2)]
    [InlineData("$[?$.absent1 == 'g']", 0)]
    [InlineData("$[?$.absent1 <= $.absent2]", 2)]
    [InlineData("$[?1 <= 2]", 2)]
    [InlineData("$[?1 > 2]", 0)]
    [InlineData("$[?13 == '13']", 0)]
    [InlineData("$[?'a' <= 'b']", 2)]
    [InlineData("$[?'a' > 'b']", 0)]
    [InlineData("$[?$.obj == $.arr]", 0)]
    [InlineData("$[?$.obj == $.obj]", 2)]
    [InlineData("$[?$.obj <= $.arr]", 0)]
    [InlineData("$[?$.arr <= $.arr]", 2)]
    [InlineData("$[?1 == $.arr]", 0)]
    [InlineData("$[?true <= true]", 2)]
    [InlineData("$[?true > true]", 0)]
    public void Comparisons_come_out_as_the_standards_table_says(string path, int count) => Check(Obj, path, count, null);

    [Theory]
    [InlineData("$[1:3]", "b c")]
    [InlineData("$[5:]", "f g")]
    [InlineData("$[1:5:2]", "b d")]
    [InlineData("$[5:1:-2]", "f d")]
    [InlineData("$[::-1]", "g f e d c b a")]
    [InlineData("$[-2]", "f")]
    [InlineData("$[0:2, 5]", "a b f")]
    [InlineData("$[::0]", "")]
    public void Slices_take_what_the_standard_says(string path, string letters) => Assert.Equal(
        letters, string.Join(' ', Find("""["a","b","c","d","e","f","g"]""", path).Select(e => e.GetString())));

    [Theory]
    [InlineData("", 1)]
    [InlineData("store", 1)]
    [InlineData("$.", 3)]
    [InlineData("$ ", 2)]
    [InlineData("$.1a", 3)]
    [InlineData("$[01]", 5)]
    [InlineData("$[-0]", 5)]
    [InlineData("$['a]", 6)]
    [InlineData("$['\\\"']", 5)]
    [InlineData("$[9007199254740992]", 19)]
    [InlineData("$[?@.a == @.*]", 14)]
    [InlineData("$[?'a']", 7)]
    [InlineData("$[?length(@.*) == 1]", 14)]
    [InlineData("$[?count(1) == 1]", 11)]
    [InlineData("$[?match(@.a, 'b') == true]", 23)]
    [InlineData("$[?(@.a]", 8)]
    [InlineData("$[?nothing(@.a)]", 12)]
    public void What_the_standard_refuses_is_refused_with_its_place(string path, int place)
    {
        Assert.Null(JsonPath.Read(path, out var fault));
        Assert.StartsWith($"Character {place}: ", fault.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("$[?match(@, '.')]", "\"𝄞\"")]
    [InlineData("$[?match(@, 'a.b')]", "\"axb\"")]
    [InlineData("$[?search(@, '[.]')]", "\"1.0\"")]
    [InlineData("$[?match(@, '(?=a).*')]", "")]
    public void A_pattern_is_an_I_Regexp(string path, string found) =>
        Assert.Equal(found, string.Join(' ', Find("""["𝄞","a\nb","axb","1.0"]""", path).Select(e => $"\"{e.GetString()}\"")));

    [Fact]
    public void A_query_that_nests_without_end_is_refused_and_ends_nothing() =>
        Assert.Null(JsonPath.Read("$" + string.Concat(Enumerable.Repeat("[?@", 20_000)), out _));

    private static void Check(string json, string path, int count, string? first)
    {
        var found = Find(json, path);
        Assert.Equal(count, found.Count);
        if (first is not null) Assert.Equal(first, found[0].GetRawText());
    }

    private static IReadOnlyList<JsonElement> Find(string json, string path)
    {
        var read = JsonPath.Read(path, out var fault);
        Assert.True(read is not null, fault.ToString());
        return read.In(JsonDocument.Parse(json).RootElement);
    }
}
