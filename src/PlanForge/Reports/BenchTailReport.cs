using System.Text.Json;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Reports;

/// <summary>Writes what the bench found of tailplane and thrust line as JSON: millimetres and degrees.</summary>
internal static class BenchTailReport
{
    /// <summary>The tailplane.</summary>
    public static void Write(Utf8JsonWriter json, TailResult tail)
    {
        json.WriteStartObject("tailplane");
        BenchReport.WritePose(json, tail.Estimates, tail.DrawnIncidence);
        BenchReport.WriteChecks(json, tail.Checks);
        if (tail.Seat is { } seat)
        {
            BenchReport.WriteCorners(json, "take_off_mm", seat.TakeOff);
            BenchReport.WriteCorners(json, "shims_mm", seat.Shims);
        }

        if (tail.Square is { } square)
        {
            BenchReport.WriteSquare(json, square);
            json.WriteBoolean("wing_taken_square", tail.IsWingTakenSquare);
        }

        if (tail.Decalage is { } decalage)
        {
            json.WriteStartObject("decalage");
            json.WriteNumber("drawn_deg", Degrees(decalage.Drawn));
            json.WriteNumber("value_deg", Degrees(decalage.Value));
            json.WriteNumber("plus_minus_deg", Degrees(decalage.HalfWidth));
            BenchReport.WriteCorners(json, "shims_mm", decalage.Seat.Shims);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    /// <summary>The thrust line.</summary>
    public static void Write(Utf8JsonWriter json, ThrustResult thrust)
    {
        json.WriteStartObject("thrust");
        WriteAngle("down", thrust.Down);
        WriteAngle("right", thrust.Right);
        if (thrust.Washers is { } washers)
        {
            json.WriteStartArray("washers_mm");
            foreach (var bolt in washers.Bolts)
            {
                json.WriteStartObject();
                json.WriteString("bolt", bolt.Bolt);
                json.WriteNumber("planned", FigureUnits.Rounded(bolt.Planned));
                json.WriteNumber("add", FigureUnits.Rounded(bolt.More));
                json.WriteNumber("in_all", FigureUnits.Rounded(bolt.InAll));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();

        void WriteAngle(string name, ThrustAngle? angle)
        {
            if (angle is { } it)
            {
                json.WriteStartObject(name);
                json.WriteNumber("drawn_deg", Degrees(it.Drawn));
                json.WriteNumber("value_deg", Degrees(it.Value));
                json.WriteNumber("plus_minus_deg", Degrees(it.HalfWidth));
                json.WriteNumber("tolerance_deg", Degrees(it.Tolerance));
                json.WriteBoolean("within", it.IsWithin);
                json.WriteBoolean("sure", it.IsSure);
                json.WriteEndObject();
            }
        }
    }

    private static double Degrees(double radians) => FigureUnits.Rounded(radians * 180 / Math.PI);
}
