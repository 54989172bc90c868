using PowerCheck.Model.Courses;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>The parts in which pack and controller feel a segment (M8).</summary>
public sealed class SegmentPartsTests
{
    [Theory]
    [InlineData(SegmentKind.Creep, 7, 1, 7)]
    [InlineData(SegmentKind.Creep, 25, 3, 25.0 / 3)]
    [InlineData(SegmentKind.Rest, 600, 60, 10)]
    [InlineData(SegmentKind.Hold, 1200, 60, 20)]
    [InlineData(SegmentKind.Jammed, 2.5, 3, 2.5 / 3)]
    [InlineData(SegmentKind.Jammed, 60, 60, 1)]
    [InlineData(SegmentKind.Jammed, 90, 60, 1.5)]
    public void A_segment_is_cut_in_parts_of_ten_seconds_or_one_where_it_jams_and_sixty_at_most(
        SegmentKind kind,
        double seconds,
        int count,
        double each
    )
    {
        var segment = new Segment(seconds, kind, 0.1, 0.3, 0.2);

        Assert.Equal(Enumerable.Repeat(segment with { DurationS = each }, count), segment.Parts());
    }
}
