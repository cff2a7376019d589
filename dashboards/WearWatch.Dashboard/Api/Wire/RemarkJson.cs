namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Something to say about a row of a file.</summary>
internal sealed record RemarkJson(int Line, string Column, string Kind, string Reason);
