using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Measuring;

/// <summary>Makes a round of measuring from its values.</summary>
internal static class RoundReader
{
    /// <summary>The round; what it lacks is reported.</summary>
    public static MeasuringRound Read(MappingValues round, DiagnosticList diagnostics)
    {
        var pins = round.Mapping(MeasuringFormat.Pins);
        var tips = round.Mapping(MeasuringFormat.Tips);
        var cord = round.Mapping(MeasuringFormat.Cord);
        var start = cord?.Mapping(MeasuringFormat.From);
        var result = new MeasuringRound(
            round.Text(MeasuringFormat.RoundName),
            pins is null ? [] : PinsOf(pins),
            TipsOf(tips),
            tips?.Word(MeasuringFormat.TipEdge) == 1 ? WingEdge.Rear : WingEdge.Front,
            start is null ? null : StartOf(start),
            TipsOf(cord),
            BoardOf(round.Choice(MeasuringFormat.Board)),
            round.Number(MeasuringFormat.Resolution),
            round.OptionalNumber(MeasuringFormat.Scatter),
            round.At)
        {
            Tailplane = TailOf(round.Mapping(MeasuringFormat.Tailplane)),
            Thrust = ThrustOf(round.Mapping(MeasuringFormat.Thrust), diagnostics),
        };
        if (result.Pins.IsEmpty && result.Tips.IsEmpty && result.Cords.IsEmpty && result.Tailplane is null && result.Thrust is null && !diagnostics.HasErrors)
        {
            diagnostics.Error(round.At, $"nothing was measured in {Quote.Text(result.Name)}: give heights of `pins` or `tips`, a `cord`, or readings of the `tailplane` or the `thrust` line");
        }

        return result;
    }

    private static TailReadings? TailOf(MappingValues? tail)
    {
        if (tail is null)
        {
            return null;
        }

        var pins = tail.Mapping(MeasuringFormat.TailPins);
        var cord = tail.Mapping(MeasuringFormat.TailCord);
        var read = new TailReadings(
            pins is null ? [] : PinsOf(pins),
            TipsOf(cord),
            cord?.Choice(MeasuringFormat.TailFrom) is MappingValues start ? StartOf(start) : null,
            cord?.Word(MeasuringFormat.TailTipEdge) == 1 ? WingEdge.Rear : WingEdge.Front,
            tail.At);
        return read.Pins.IsEmpty && read.Cords.IsEmpty ? null : read;
    }

    private static ThrustReadings? ThrustOf(MappingValues? thrust, DiagnosticList diagnostics)
    {
        if (thrust is null)
        {
            return null;
        }

        ImmutableArray<MeasuredLength> down = LengthsOf(thrust, MeasuringFormat.ThrustDown), right = LengthsOf(thrust, MeasuringFormat.ThrustRight);
        if (down.IsEmpty && right.IsEmpty && !diagnostics.HasErrors)
        {
            diagnostics.Error(thrust.At, "`thrust` needs `down` or `right`");
        }

        return new(thrust.Number(MeasuringFormat.ThrustOver), down, right, thrust.At);
    }

    private static CordStart StartOf(MappingValues start) => new(start.Number(MeasuringFormat.Station), start.Number(MeasuringFormat.Height));

    private static ImmutableArray<PinHeight> PinsOf(MappingValues pins)
    {
        var heights = ImmutableArray.CreateBuilder<PinHeight>();
        Add(WingEdge.Front, MeasuringFormat.Front);
        Add(WingEdge.Rear, MeasuringFormat.Rear);
        return heights.ToImmutable();

        void Add(WingEdge edge, Key<MappingFormat> key)
        {
            if (pins.Mapping(key) is not { } pair)
            {
                return;
            }

            foreach (var side in TipsOf(pair))
            {
                heights.Add(new(edge, side.Hand, AcrossOf(pins.Choice(MeasuringFormat.Across), side.Hand), side.Lengths));
            }
        }
    }

    private static double? AcrossOf(ReadValue? across, Hand hand) => across switch
    {
        NumberValue both => both.Number,
        MappingValues sides => sides.Number(hand == Hand.Port ? MeasuringFormat.PortAcross : MeasuringFormat.StarboardAcross),
        _ => null,
    };

    // Port first, then starboard; a side without readings is left out.
    private static ImmutableArray<TipReading> TipsOf(MappingValues? sides)
    {
        var tips = ImmutableArray.CreateBuilder<TipReading>();
        Add(Hand.Port, MeasuringFormat.Port);
        Add(Hand.Starboard, MeasuringFormat.Starboard);
        return tips.ToImmutable();

        void Add(Hand hand, Key<ListFormat> key)
        {
            if (sides is not null && LengthsOf(sides, key) is { IsEmpty: false } lengths)
            {
                tips.Add(new(hand, lengths));
            }
        }
    }

    private static ImmutableArray<MeasuredLength> LengthsOf(MappingValues values, Key<ListFormat> key)
    {
        var lengths = ImmutableArray.CreateBuilder<MeasuredLength>();
        foreach (var item in values.List(key))
        {
            if (item is NumberValue number)
            {
                lengths.Add(new(number.Number, number.At));
            }
        }

        return lengths.ToImmutable();
    }

    private static BoardOffset BoardOf(ReadValue? board) => board switch
    {
        NumberValue measured => new(BoardKnowledge.Measured, measured.Number),
        WordValue { Index: 1 } => new(BoardKnowledge.AsDrawn),
        _ => new(BoardKnowledge.Unknown),
    };
}
