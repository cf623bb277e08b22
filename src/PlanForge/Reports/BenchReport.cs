using System.Collections.Immutable;
using System.Text.Json;
using PlanForge.Parts;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Reports;

/// <summary>Writes what the bench found as JSON, for programs: millimetres and degrees.</summary>
internal static class BenchReport
{
    /// <summary>The report.</summary>
    public static byte[] Of(RiggedAirframe airframe, BenchResult result) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("planforge", ToolVersion.Text);
        json.WriteString("design", airframe.Description.Name);
        json.WriteString("fingerprint", airframe.Description.Issue.Fingerprint.Code);
        json.WriteStartArray("rounds");
        foreach (var round in result.Rounds)
        {
            WriteRound(json, round);
        }

        json.WriteEndArray();
        json.WriteTexts("warnings", result.Findings.Select(finding => finding.Message));
        json.WriteEndObject();
    });

    private static void WriteRound(Utf8JsonWriter json, RoundResult round)
    {
        json.WriteStartObject();
        json.WriteString("name", round.Name);
        json.WriteBoolean("within_tolerance", round.IsWithin);
        WritePose(json, round.Estimates, round.DrawnIncidence);
        WriteChecks(json, round.Checks);
        WriteCorrection(json, round);
        if (round.Tail is { } tail)
        {
            BenchTailReport.Write(json, tail);
        }

        if (round.Thrust is { } thrust)
        {
            BenchTailReport.Write(json, thrust);
        }

        json.WriteEndObject();
    }

    /// <summary>The unknowns, each with its value or what it lacks.</summary>
    public static void WritePose(Utf8JsonWriter json, ImmutableArray<PoseEstimate> estimates, double drawnIncidence)
    {
        json.WriteStartArray("pose");
        foreach (var estimate in estimates)
        {
            var isLength = estimate.Unknown.IsLength();
            var unit = isLength ? 1 : 180 / Math.PI;
            json.WriteStartObject();
            json.WriteString("unknown", NameOf(estimate.Unknown));
            if (estimate.HalfWidth is { } half)
            {
                json.WriteNumber("value", FigureUnits.Rounded(estimate.Value * unit));
                json.WriteNumber("plus_minus", FigureUnits.Rounded(half * unit));
                json.WriteString("unit", isLength ? "mm" : "deg");
                if (estimate.Unknown == PoseUnknown.Incidence)
                {
                    json.WriteNumber("drawn", FigureUnits.Rounded(drawnIncidence * unit));
                }
            }
            else
            {
                json.WriteString("lacks", estimate.Lack);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The errors against the tolerances.</summary>
    public static void WriteChecks(Utf8JsonWriter json, ImmutableArray<BenchCheck> checks)
    {
        json.WriteStartArray("errors");
        foreach (var check in checks)
        {
            json.WriteStartObject();
            json.WriteString("error", BenchTexts.LabelOf(check.Kind));
            json.WriteNumber("value_mm", FigureUnits.Rounded(check.Value));
            json.WriteNumber("plus_minus_mm", FigureUnits.Rounded(check.HalfWidth));
            json.WriteNumber("tolerance_mm", FigureUnits.Rounded(check.Tolerance));
            json.WriteBoolean("within", check.IsWithin);
            json.WriteBoolean("sure", check.IsSure);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteCorrection(Utf8JsonWriter json, RoundResult round)
    {
        if (round.Correction is { } correction)
        {
            json.WriteStartArray("take_off_mm");
            foreach (var station in correction.Stations)
            {
                json.WriteStartObject();
                json.WriteNumber("station", FigureUnits.Rounded(station.Station));
                json.WriteNumber("port", FigureUnits.Rounded(station.Port));
                json.WriteNumber("starboard", FigureUnits.Rounded(station.Starboard));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            WriteCorners(json, "shims_mm", correction.Shims);
            json.WriteNumber("leading_edge_move_mm", FigureUnits.Rounded(correction.LeadingEdgeMove));
        }

        if (round.Square is { } square)
        {
            WriteSquare(json, square);
        }
    }

    /// <summary>How to turn a wing or tailplane square.</summary>
    public static void WriteSquare(Utf8JsonWriter json, SquareCorrection square)
    {
        json.WriteStartObject("square");
        json.WriteString("trailing_edge_to", square.To == Airframe.Measuring.Hand.Port ? "port" : "starboard");
        json.WriteNumber("trailing_edge_mm", FigureUnits.Rounded(square.TrailingEdge));
        json.WriteNumber("tip_mm", FigureUnits.Rounded(square.Tip));
        json.WriteEndObject();
    }

    /// <summary>A thickness at each end of a seat.</summary>
    public static void WriteCorners(Utf8JsonWriter json, string name, SeatCorners corners)
    {
        json.WriteStartObject(name);
        json.WriteNumber("port_front", FigureUnits.Rounded(corners.PortFront));
        json.WriteNumber("port_rear", FigureUnits.Rounded(corners.PortRear));
        json.WriteNumber("starboard_front", FigureUnits.Rounded(corners.StarboardFront));
        json.WriteNumber("starboard_rear", FigureUnits.Rounded(corners.StarboardRear));
        json.WriteEndObject();
    }

    private static string NameOf(PoseUnknown unknown) => unknown switch
    {
        PoseUnknown.Incidence => "incidence",
        PoseUnknown.Roll => "roll",
        PoseUnknown.Warp => "warp",
        PoseUnknown.Height => "height",
        PoseUnknown.Yaw => "yaw",
        _ => "aft",
    };
}
