using BenchmarkDotNet.Attributes;
using PlanForge.Airframe;
using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Benchmarks;

/// <summary>What each stage costs on the largest example, warm.</summary>
[InProcess]
[MemoryDiagnoser]
public class StageBenchmarks
{
    private DescriptionText _description = null!;
    private AirframeDescription _airframe = null!;
    private PartList _parts = null!;
    private SheetSet _sheets = null!;
    private CutDrawing[] _cutDrawings = null!;

    [GlobalSetup]
    public void Prepare()
    {
        _description = DescriptionText.Largest();
        _airframe = Stages.Read(_description);
        _parts = Stages.Parts(_airframe);
        _sheets = Stages.Sheets(_airframe, _parts);
        _cutDrawings = Stages.CutDrawings(_parts);
    }

    [Benchmark]
    public object Read() => Stages.Read(_description);

    [Benchmark]
    public object Parts() => Stages.Parts(_airframe);

    [Benchmark]
    public object Sheets() => Stages.Sheets(_airframe, _parts);

    [Benchmark]
    public int Pdf() => Stages.Pdf(_sheets);

    [Benchmark]
    public int Svg() => Stages.Svg(_sheets);

    [Benchmark]
    public object CutDrawings() => Stages.CutDrawings(_parts);

    [Benchmark]
    public int CutFiles() => Stages.CutFiles(_cutDrawings);

    [Benchmark]
    public int Whole() => Stages.Whole(_description);
}
