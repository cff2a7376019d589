using PdfSharp.Drawing;
using WearWatch.Dashboard.Kit.Charts;

namespace WearWatch.Dashboard.Kit.Paper;

/// <summary>A picture of a page on paper, in the colours of the light look.</summary>
internal static class PaperDrawing
{
    private static readonly XColor Main = XColor.FromArgb(0x0b, 0x5c, 0x75);
    private static readonly XColor Apart = XColor.FromArgb(0xa8, 0x43, 0x00);

    /// <summary>Draws it with its corner at a place, so many points wide.</summary>
    public static void Draw(XGraphics page, Drawing drawing, XPoint corner, double width)
    {
        var scale = width / drawing.Frame.Width;
        var font = new XFont(SheetFont.Family, drawing.Frame.FontSize * scale);
        double X(double x) => corner.X + scale * x;
        double Y(double y) => corner.Y + scale * y;
        var radius = scale * DrawnMark.Point.Radius;
        foreach (var mark in drawing.Marks)
        {
            switch (mark)
            {
                case DrawnMark.Bar bar:
                    page.DrawRectangle(Full(bar.Ink), X(bar.X), Y(bar.Y), scale * bar.Width, scale * bar.Height);
                    break;
                case DrawnMark.Stroke stroke:
                    page.DrawLine(Pen(stroke.Ink), X(stroke.X1), Y(stroke.Y1), X(stroke.X2), Y(stroke.Y2));
                    break;
                case DrawnMark.Point { Ink: Ink.Apart } point:
                    page.DrawRectangle(Full(point.Ink), X(point.X) - radius, Y(point.Y) - radius, 2 * radius, 2 * radius);
                    break;
                case DrawnMark.Point point:
                    page.DrawEllipse(Full(point.Ink), X(point.X) - radius, Y(point.Y) - radius, 2 * radius, 2 * radius);
                    break;
                case DrawnMark.Label label:
                    page.DrawString(label.Text, font, XBrushes.Black, new XPoint(X(label.X), Y(label.Y)), Side(label.Side));
                    break;
            }
        }
    }

    private static XColor Colour(Ink ink) => ink switch
    {
        Ink.Grid => XColors.LightGray,
        Ink.Axis => XColors.Gray,
        Ink.Apart => Apart,
        _ => Main,
    };

    private static XSolidBrush Full(Ink ink) => new(Colour(ink));

    private static XPen Pen(Ink ink) =>
        new(Colour(ink), 0.6) { DashStyle = ink == Ink.Stated ? XDashStyle.Dash : XDashStyle.Solid };

    private static XStringFormat Side(LabelSide side) => side switch
    {
        LabelSide.Middle => XStringFormats.BaseLineCenter,
        LabelSide.Left => XStringFormats.BaseLineRight,
        _ => XStringFormats.BaseLineLeft,
    };
}
