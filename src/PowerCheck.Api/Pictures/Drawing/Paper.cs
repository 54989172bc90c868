using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>Sizes and colors of the pictures. The colors are told apart by every kind of color vision (Okabe and Ito, 2008).</summary>
internal static class Paper
{
    /// <summary>Width of every picture [px].</summary>
    public const float Width = 600;

    /// <summary>Free space at every side [px].</summary>
    public const float Margin = 14;

    /// <summary>Size of the smallest letters [px].</summary>
    public const float Small = 11;

    /// <summary>From one line of small letters to the next [px].</summary>
    public const float Line = 15;

    public static readonly SKColor White = SKColors.White;
    public static readonly SKColor Ink = new(0x1A, 0x1A, 0x1A);
    public static readonly SKColor Gray = new(0x50, 0x50, 0x50);
    public static readonly SKColor Rule = new(0xC8, 0xC8, 0xC8);
    public static readonly SKColor Grid = new(0xE6, 0xE6, 0xE6);
    public static readonly SKColor Tint = new(0xF3, 0xF3, 0xF0);
    public static readonly SKColor Blue = new(0x00, 0x72, 0xB2);
    public static readonly SKColor Vermilion = new(0xD5, 0x5E, 0x00);
    public static readonly SKColor Green = new(0x00, 0x9E, 0x73);
    public static readonly SKColor Orange = new(0xE6, 0x9F, 0x00);
    public static readonly SKColor Purple = new(0xCC, 0x79, 0xA7);
}
