using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.IO.Compression;
using System.Xml.Linq;
using PowerCheck.Api.Pictures;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Pictures;

/// <summary>The pictures as documents, for rigs of every kind.</summary>
public sealed class FormTests
{
    public static TheoryData<string> Names => [.. SampleRigs.All, "burning", "long name"];

    // A check with spread takes a while: one is enough for all tests of a rig.
    private static readonly ConcurrentDictionary<string, Lazy<PictureContent>> Spread = new(
        StringComparer.Ordinal
    );

    private static PictureContent WithSpread(string name) =>
        Spread
            .GetOrAdd(
                name,
                rig => new(() => Pictured.Of(Body(rig), SpreadMethod.Linear, all: true))
            )
            .Value;

    private static PictureContent Content(string name) => Pictured.Of(Body(name), all: true);

    private static string Body(string name) =>
        name switch
        {
            "burning" => Rigs.Example()
                .With("vehicle.massKg", 9)
                .With(
                    "vehicle.drivetrain",
                    System.Text.Json.Nodes.JsonNode.Parse("""{"overallRatio":16}""")
                )
                .ToJsonString(),
            "long name" => Rigs.Example()
                .With("id", "Kletterer für Regentage \u65e5\u672c & <b>\"" + new string('w', 70))
                .ToJsonString(),
            _ => SampleRigs.Of(name).ToJsonString(),
        };

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_text_lies_on_the_paper_and_can_be_read(string name)
    {
        foreach (var (picture, svg) in Pictured.All(WithSpread(name)))
        {
            var (width, height) = Pictured.Size(svg);
            Assert.Equal(600, width);
            Assert.All(
                Pictured.Texts(svg),
                text =>
                {
                    var about = $"{picture}: {text}";
                    Assert.True(text.Size >= 11, about);
                    Assert.True(text.Width > 0, about);
                    Assert.True(text.Left >= 0 && text.Right <= width - 4, about);
                    Assert.True(text.Top >= 0 && text.Bottom <= height, about);
                }
            );
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_text_lies_on_another(string name)
    {
        foreach (var (picture, svg) in Pictured.All(WithSpread(name)))
        {
            var texts = Pictured.Texts(svg);
            Assert.NotEmpty(texts);
            for (var n = 0; n < texts.Count; n++)
            {
                Assert.All(
                    texts.Skip(n + 1),
                    other =>
                        Assert.False(texts[n].Overlaps(other), $"{picture}: {texts[n]} on {other}")
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_document_names_itself_and_needs_nothing(string name)
    {
        var ids = new List<string>();
        foreach (var (picture, svg) in Pictured.All(Content(name)))
        {
            var root = XDocument.Parse(svg).Root!;
            string[] labels = root.Attribute("aria-labelledby")!.Value.Split(' ');
            Assert.Equal("img", root.Attribute("role")!.Value);
            Assert.Equal([picture + "-title", picture + "-desc"], labels);
            Assert.All(
                labels,
                id => Assert.NotEmpty(root.Elements().Single(element => Id(element) == id).Value)
            );
            Assert.DoesNotContain(
                root.DescendantsAndSelf().Attributes(),
                attribute =>
                    attribute.Name.LocalName is "style" or "href" or "onload" or "class"
                    || attribute.Value.Contains("://", StringComparison.Ordinal)
                        && !attribute.IsNamespaceDeclaration
            );
            Assert.DoesNotContain(
                root.Descendants(),
                element => element.Name.LocalName is "script" or "style" or "image" or "use"
            );
            ids.AddRange(root.DescendantsAndSelf().Select(Id).OfType<string>());
            Assert.All(
                root.Descendants().Attributes("clip-path"),
                use => Assert.Contains(use.Value[5..^1], ids)
            );
        }

        Assert.Distinct(ids, StringComparer.Ordinal);
    }

    private static string? Id(XElement element) => element.Attribute("id")?.Value;

    [Fact]
    public void The_same_rig_is_the_same_document()
    {
        var content = Content("the example");

        Assert.Equal(Picture.SheetSvg(content), Picture.SheetSvg(content));
        Assert.Equal(Picture.SheetPng(content), Picture.SheetPng(content));
    }

    [Fact]
    public void Pictures_drawn_side_by_side_are_the_same()
    {
        var content = Content("the example");
        var alone = Picture.SheetSvg(content);
        var drawn = new string[24];

        Parallel.For(0, drawn.Length, n => drawn[n] = Picture.SheetSvg(content));

        Assert.All(drawn, svg => Assert.Equal(alone, svg));
    }

    [Fact]
    public void The_png_is_as_wide_as_the_paper_as_high_as_the_drawing_and_drawn_on()
    {
        var content = WithSpread("burning");
        var png = Picture.SheetPng(content);

        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], png[..8]);
        Assert.Equal(600, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(
            Pictured.Size(Picture.SheetSvg(content)).Height,
            BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))
        );
        // The filter byte of each line aside: paper, ink and colors.
        Assert.True(Inflated(png).Distinct().Count() > 100);
    }

    private static byte[] Inflated(byte[] png)
    {
        using var packed = new MemoryStream();
        for (var at = 8; at < png.Length; )
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            if (png.AsSpan(at + 4, 4).SequenceEqual("IDAT"u8))
            {
                packed.Write(png, at + 8, length);
            }

            at += length + 12;
        }

        packed.Position = 0;
        using var inflating = new ZLibStream(packed, CompressionMode.Decompress);
        using var plain = new MemoryStream();
        inflating.CopyTo(plain);
        return plain.ToArray();
    }

    [Fact]
    public void A_name_in_other_letters_stays_whole_on_one_line()
    {
        var texts = Pictured.Texts(Picture.SheetSvg(Content("long name"))).Select(t => t.Text);

        Assert.Contains(
            texts,
            text => text.Contains("Kletterer für Regentage ?? & <b>\"", StringComparison.Ordinal)
        );
    }
}
