using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Parts.Joints;

namespace PlanForge.Drafting.Tests.Arrangement;

public class WingJointDrawingTests
{
    [Theory]
    [InlineData("oxbow-1420")]
    [InlineData("fellside-2800")]
    [InlineData("saltmarsh-1600")]
    [InlineData("thimble-36")]
    public void No_text_of_the_wing_joint_lies_over_another(string design)
    {
        var airframe = Designs.Rigged(design);
        var parts = new WingJointParts().Make(airframe, []).ToList();
        Assert.Equal(2, parts.Count);
        foreach (var part in parts)
        {
            foreach (var drawing in PartArrangements.Upright(part, airframe.Description.DisplayUnit).Fitting((_, _) => true))
            {
                var texts = drawing.Items.OfType<DrawingItem.Text>().Select(text => (text.Content, Room: TextExtents.Of(text))).ToArray();
                for (var i = 0; i < texts.Length; i++)
                {
                    for (var j = 0; j < i; j++)
                    {
                        Assert.False(texts[i].Room.Touches(texts[j].Room), $"{part.Id}: '{texts[i].Content}' over '{texts[j].Content}'");
                    }
                }
            }
        }
    }
}
