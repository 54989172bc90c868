namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>One drawing, as wide as the paper.</summary>
internal interface IDrawing
{
    /// <summary>How high it is [px].</summary>
    float Height { get; }

    /// <summary>Draws it.</summary>
    /// <param name="brush">Draws on the picture.</param>
    /// <param name="top">Its upper end [px].</param>
    void Draw(Brush brush, float top);
}
