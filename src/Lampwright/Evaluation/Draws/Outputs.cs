namespace Lampwright.Evaluation.Draws;

/// <summary>Places of the predicted numbers in one row of results. A row is filled once for each draw.</summary>
internal sealed class Outputs
{
    /// <summary>Count of places handed out so far.</summary>
    public int Count { get; private set; }

    /// <summary>Hands out a place.</summary>
    public int Add() => Count++;

    /// <summary>Hands out neighbouring places and returns the first.</summary>
    public int Add(int count)
    {
        var first = Count;
        Count += count;
        return first;
    }
}
