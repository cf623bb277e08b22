using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Drafting.Arrangement;

/// <summary>Rows of dimensions beside a view: each goes into the nearest row in which neither its line nor its text meets another's.</summary>
/// <param name="view">The view.</param>
/// <param name="first">Where the first row's line stands: height of level rows, place across of upright ones.</param>
/// <param name="step">From row to row, signed: away from the view.</param>
/// <param name="isUpright">True for upright dimensions.</param>
internal sealed class DimensionRows(ViewSketch view, double first, double step, bool isUpright)
{
    // Chained dimensions meet end to end, and a chord's extension lines lean a little: so much may two share.
    private const double Meeting = 1.5;

    private readonly List<List<(double From, double To)>> _rows = [];
    private int _firstOpen;

    /// <summary>Begins a new row: what follows stands farther out than all before.</summary>
    public void Close() => _firstOpen = _rows.Count;

    /// <summary>Draws a dimension made for the place of its row.</summary>
    public void Add(Func<double, PartDimension.Linear> make)
    {
        for (var row = _firstOpen; ; row++)
        {
            var dimension = make(first + (row * step));
            var (from, to) = ExtentOf(dimension);
            while (_rows.Count <= row)
            {
                _rows.Add([]);
            }

            if (_rows[row].TrueForAll(other => other.To < from + Meeting || to < other.From + Meeting))
            {
                _rows[row].Add((from, to));
                view.Draw(dimension);
                return;
            }
        }
    }

    private (double From, double To) ExtentOf(PartDimension.Linear dimension)
    {
        var trial = new Sketch();
        PlacedAnnotation.Draw(trial, dimension, dimension.Text ?? "", view.Height);
        return isUpright ? (trial.Bounds.MinY, trial.Bounds.MaxY) : (trial.Bounds.MinX, trial.Bounds.MaxX);
    }
}
