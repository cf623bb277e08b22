using System.Reflection;

namespace PlanForge.Tests.Architecture;

/// <summary>The assemblies of the product.</summary>
internal static class Assemblies
{
    public static Assembly Geometry => typeof(Geometry.Point2).Assembly;

    public static Assembly Airframe => typeof(PlanForge.Airframe.AirframeDescription).Assembly;

    public static Assembly Parts => typeof(PlanForge.Parts.Part).Assembly;

    public static Assembly Drafting => typeof(PlanForge.Drafting.Model.Sheet).Assembly;

    public static Assembly Output => typeof(PlanForge.Output.Pdf.PdfWriter).Assembly;

    public static Assembly Program => typeof(Application).Assembly;

    public static Assembly[] All => [Geometry, Airframe, Parts, Drafting, Output, Program];
}
