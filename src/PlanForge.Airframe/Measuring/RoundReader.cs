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
            start is null ? null : new(start.Number(MeasuringFormat.Station), start.Number(MeasuringFormat.Height)),
            TipsOf(cord),
            BoardOf(round.Choice(MeasuringFormat.Board)),
            round.Number(MeasuringFormat.Resolution),
            round.OptionalNumber(MeasuringFormat.Scatter),
            round.At);
        if (result.Pins.IsEmpty && result.Tips.IsEmpty && result.Cords.IsEmpty && !diagnostics.HasErrors)
        {
            diagnostics.Error(round.At, $"nothing was measured in {Quote.Text(result.Name)}: give heights of `pins` or `tips`, or a `cord`");
        }

        return result;
    }

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
            var lengths = ImmutableArray.CreateBuilder<MeasuredLength>();
            foreach (var item in sides?.List(key) ?? [])
            {
                if (item is NumberValue number)
                {
                    lengths.Add(new(number.Number, number.At));
                }
            }

            if (lengths.Count > 0)
            {
                tips.Add(new(hand, lengths.ToImmutable()));
            }
        }
    }

    private static BoardOffset BoardOf(ReadValue? board) => board switch
    {
        NumberValue measured => new(BoardKnowledge.Measured, measured.Number),
        WordValue { Index: 1 } => new(BoardKnowledge.AsDrawn),
        _ => new(BoardKnowledge.Unknown),
    };
}
