using System.Globalization;
using System.IO.Compression;
using System.Security;
using WearWatch.Plant.Files;

namespace WearWatch.Worker.Tests.Files;

/// <summary>
/// Workbooks written part by part as ECMA-376 part 1 lays them down, without a library: texts in the cell, numbers, and dates as
/// numbers of days with the built-in format 14.
/// </summary>
internal static class SheetFile
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Kind = "application/vnd.openxmlformats-officedocument.spreadsheetml";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";

    /// <summary>A workbook of sheets; a row that is null has no element at all.</summary>
    public static ImportFile Of(string name, params (string Name, object?[]?[] Rows)[] sheets)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add("[Content_Types].xml", $"""
                <Types xmlns="{Package}/content-types">
                <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
                <Default Extension="xml" ContentType="application/xml"/>
                <Override PartName="/xl/workbook.xml" ContentType="{Kind}.sheet.main+xml"/>
                <Override PartName="/xl/styles.xml" ContentType="{Kind}.styles+xml"/>
                {Each(i => $"""<Override PartName="/xl/worksheets/sheet{i}.xml" ContentType="{Kind}.worksheet+xml"/>""")}</Types>
                """);
            Add("_rels/.rels", $"""
                <Relationships xmlns="{Package}/relationships">
                <Relationship Id="rId1" Type="{Relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>
                """);
            Add("xl/workbook.xml", $"""
                <workbook xmlns="{Main}" xmlns:r="{Relations}"><sheets>
                {Each(i => $"""<sheet name="{sheets[i - 1].Name}" sheetId="{i}" r:id="rId{i}"/>""")}</sheets></workbook>
                """);
            Add("xl/_rels/workbook.xml.rels", $"""
                <Relationships xmlns="{Package}/relationships">
                {Each(i => $"""<Relationship Id="rId{i}" Type="{Relations}/worksheet" Target="worksheets/sheet{i}.xml"/>""")}
                <Relationship Id="rIdS" Type="{Relations}/styles" Target="styles.xml"/></Relationships>
                """);
            Add("xl/styles.xml", $"""
                <styleSheet xmlns="{Main}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills>
                <borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs>
                <cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>
                """);
            foreach (var (at, sheet) in sheets.Index())
                Add($"xl/worksheets/sheet{at + 1}.xml",
                    $"""<worksheet xmlns="{Main}"><sheetData>{Rows(sheet.Rows)}</sheetData></worksheet>""");

            void Add(string path, string text)
            {
                using var part = new StreamWriter(zip.CreateEntry(path).Open());
                part.Write("""<?xml version="1.0" encoding="UTF-8" standalone="yes"?>""" + text);
            }
        }

        return A.File(name, bytes.ToArray());

        string Each(Func<int, string> of) => string.Concat(Enumerable.Range(1, sheets.Length).Select(of));
    }

    private static string Rows(object?[]?[] rows) => string.Concat(rows.Index().Where(r => r.Item is not null).Select(r =>
        $"""<row r="{r.Index + 1}">{string.Concat(r.Item!.Index().Select(c => Cell(r.Index + 1, c)))}</row>"""));

    private static string Cell(int row, (int Column, object? Value) cell)
    {
        var at = FormattableString.Invariant($"{(char)('A' + cell.Column)}{row}");
        return cell.Value switch
        {
            null => "",
            DateTime day => $"""<c r="{at}" s="1"><v>{day.ToOADate().ToString(CultureInfo.InvariantCulture)}</v></c>""",
            string text => $"""<c r="{at}" t="inlineStr"><is><t>{SecurityElement.Escape(text)}</t></is></c>""",
            IFormattable number => $"""<c r="{at}"><v>{number.ToString(null, CultureInfo.InvariantCulture)}</v></c>""",
            _ => throw new ArgumentException("No such cell.", nameof(cell)),
        };
    }
}
