using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <content>Filters (RFC 9535, 2.3.5) and their functions (2.4). What does not fit each other by type is refused.</content>
internal sealed partial class PathReader
{
    private static readonly string[] Signs = ["==", "!=", "<=", ">=", "<", ">"];

    private FilterTest.Any AnyOf()
    {
        var tests = new List<FilterTest> { AllOf() };
        while (Take("||")) tests.Add(AllOf());
        return new FilterTest.Any(tests);
    }

    private FilterTest.All AllOf()
    {
        var tests = new List<FilterTest>();
        do
        {
            Blanks();
            tests.Add(Basic());
            Blanks();
        }
        while (Take("&&"));
        return new FilterTest.All(tests);
    }

    private FilterTest Basic()
    {
        if (Take("!"))
        {
            Blanks();
            return new FilterTest.Not(Next == '(' ? InBrackets() : Test(Operand()));
        }

        if (Next == '(') return InBrackets();
        var left = Operand();
        return Follows(Signs) ? Comparison(left) : Test(left);
    }

    private FilterTest InBrackets()
    {
        Want("(");
        var test = Filter();
        Want(")");
        return test;
    }

    private FilterTest.Compares Comparison(Part left)
    {
        var sign = Array.Find(Signs, Take)!;
        Blanks();
        return new FilterTest.Compares(Value(left), sign, Value(Operand()));
    }

    private FilterTest Test(Part part)
    {
        if (part.Test is { } test) return test;
        if (part.Query is { } query) return new FilterTest.Exists(query);
        Fail($"a value by itself is no test: compare it with another.");
        return new FilterTest.All([]);
    }

    private FilterValue Value(Part part)
    {
        if (part.Value is { } value) return value;
        if (part.Query is { IsSingular: true } query) return new FilterValue.Found(query);
        Fail($"before this stands what is not one value.");
        return new FilterValue.Literal(default);
    }

    private PathSteps Query(Part part)
    {
        if (part.Query is { } query) return query;
        Fail($"a query with @ or $ is missing.");
        return new PathSteps(FromRoot: true, []);
    }

    private Part Operand()
    {
        if (Take("@")) return new Part(Query: new PathSteps(FromRoot: false, Segments()));
        if (Take("$")) return new Part(Query: new PathSteps(FromRoot: true, Segments()));
        if (Next is '"' or '\'') return Literal(JsonSerializer.SerializeToElement(Quoted()));
        if (IsIndex) return Literal(Number());
        var name = Function();
        if (name is "true" or "false" or "null") return Literal(JsonDocument.Parse(name).RootElement);
        return Called(name);
    }

    private static Part Literal(JsonElement value) => new(Value: new FilterValue.Literal(value));

    private Part Called(string name)
    {
        Want("(");
        var part = name switch
        {
            "length" => new Part(Value: new FilterValue.Length(Value(Argument()))),
            "count" => new Part(Value: new FilterValue.Count(Query(Argument()))),
            "value" => new Part(Value: new FilterValue.Found(Query(Argument()))),
            "match" => new Part(Test: new FilterTest.Matches(Value(Argument()), Value(SecondArgument()), Whole: true)),
            "search" => new Part(Test: new FilterTest.Matches(Value(Argument()), Value(SecondArgument()), Whole: false)),
            _ => default,
        };
        if (part == default) Fail($"known here are length, count, value, match, search.");
        Want(")");
        return part;
    }

    private Part Argument()
    {
        Blanks();
        var argument = Operand();
        Blanks();
        return argument;
    }

    private Part SecondArgument()
    {
        Want(",");
        return Argument();
    }

    /// <summary>One side of a comparison, a test, or an argument: what it is, it is by one of these.</summary>
    private readonly record struct Part(PathSteps? Query = null, FilterValue? Value = null, FilterTest? Test = null);
}
