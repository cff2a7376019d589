namespace WearWatch.Plant.JsonPaths;

/// <summary>Reads the segments and selectors of a query (RFC 9535, 2.2 to 2.5).</summary>
internal sealed partial class PathReader(string text) : PathCursor(text)
{
    /// <summary>Filters within filters, so that no query ends the program.</summary>
    private const int Deepest = 32;

    private int depth;

    public PathSteps Whole()
    {
        Want("$");
        var query = new PathSteps(FromRoot: true, Segments());
        if (!IsAtEnd) Fail($"a query goes on with . or [");
        return query;
    }

    private List<PathSegment> Segments()
    {
        var segments = new List<PathSegment>();
        while (Fault is null && Follows(".", "[")) segments.Add(Segment());
        return segments;
    }

    private PathSegment Segment()
    {
        var descends = Take("..");
        if (Next == '[') return new PathSegment(descends, Bracketed());
        if (!descends) Want(".");
        return new PathSegment(descends, [Take("*") ? new Selector.Every() : new Selector.Named(Name())]);
    }

    private List<Selector> Bracketed()
    {
        Want("[");
        var selectors = new List<Selector>();
        do
        {
            Blanks();
            selectors.Add(Selection());
            Blanks();
        }
        while (Take(","));
        Want("]");
        return selectors;
    }

    private Selector Selection()
    {
        if (Next is '"' or '\'') return new Selector.Named(Quoted());
        if (Take("*")) return new Selector.Every();
        if (Take("?")) return new Selector.Where(Filter());
        if (IsIndex || Next == ':') return IndexOrSlice();
        Fail($"a name in quotes, an index, * or ? is missing.");
        return new Selector.Every();
    }

    private Selector IndexOrSlice()
    {
        long? from = IsIndex ? Index() : null;
        Blanks();
        if (!Take(":")) return new Selector.At(from ?? 0);
        Blanks();
        long? to = IsIndex ? Index() : null;
        Blanks();
        if (!Take(":")) return new Selector.Slice(from, to, 1);
        Blanks();
        return new Selector.Slice(from, to, IsIndex ? Index() : 1);
    }

    private FilterTest Filter()
    {
        Blanks();
        if (++depth > Deepest) Fail($"filters stand in each other {Deepest} deep at most.");
        FilterTest test = Fault is null ? AnyOf() : new FilterTest.All([]);
        depth--;
        return test;
    }
}
