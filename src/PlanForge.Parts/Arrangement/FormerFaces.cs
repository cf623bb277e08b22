using PlanForge.Airframe;

namespace PlanForge.Parts.Arrangement;

/// <summary>The faces of a former that stand within a range.</summary>
internal static class FormerFaces
{
    /// <summary>Stations of its front and rear face, mm, as far as they lie from one station to another, ends included; how thick it is is not asked where it begins behind.</summary>
    public static IEnumerable<(double Station, bool IsFront)> Between(FormerDescription former, double from, double to)
    {
        var front = former.Station;
        if (front > to)
        {
            yield break;
        }

        if (front >= from)
        {
            yield return (front, true);
        }

        var rear = front + former.Thickness;
        if (rear >= from && rear <= to)
        {
            yield return (rear, false);
        }
    }
}
