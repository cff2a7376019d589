namespace WearWatch.Dashboard.Engineer.Workbench.Studies;

/// <summary>Invented studies to try the page with. The people are letters, the chains do not exist.</summary>
public static class StudyExample
{
    /// <summary>
    /// Ten sections of worn chain, three people, two trials each, elongation in percent. B holds the tape a little slack.
    /// </summary>
    public const string Crossed = """
        section	A	A	B	B	C	C
        1	0.42	0.45	0.36	0.38	0.44	0.43
        2	0.88	0.86	0.79	0.83	0.90	0.87
        3	1.31	1.35	1.27	1.24	1.33	1.34
        4	1.76	1.74	1.66	1.70	1.75	1.79
        5	2.12	2.15	2.08	2.03	2.14	2.11
        6	2.58	2.55	2.49	2.52	2.57	2.60
        7	0.65	0.62	0.58	0.55	0.63	0.66
        8	1.07	1.10	1.02	0.98	1.09	1.06
        9	1.52	1.49	1.41	1.45	1.53	1.50
        10	2.33	2.36	2.25	2.29	2.35	2.32
        """;

    /// <summary>A tape held against gauge blocks, in millimetres: it reads long by a little that grows with the length.</summary>
    public const string Known = """
        300	300.1
        300	300.0
        300	300.2
        600	600.4
        600	600.3
        600	600.5
        1200	1200.8
        1200	1200.9
        1200	1200.7
        """;
}
