namespace Lampwright.Files.Charts;

/// <summary>The numbers that the axes of a chart have to hold.</summary>
internal static class ChartNumbers
{
    /// <summary>Numbers of the first axis, of the one at the left and of the one at the right.</summary>
    public static (List<double> X, List<double> Y, List<double> Second) Of(Chart chart)
    {
        var (xs, left, right) = (new List<double>(), new List<double>(), new List<double>());
        foreach (var layer in chart.Layers)
        {
            var ys = layer.OnSecond && chart.Second is not null ? right : left;
            switch (layer)
            {
                case LineLayer line:
                    xs.AddRange(line.Points.Select(p => p.X));
                    ys.AddRange(line.Points.Select(p => p.Y));
                    break;
                case AreaLayer area:
                    xs.AddRange(area.Points.Select(p => p.X));
                    ys.AddRange(area.Points.Select(p => p.Y));
                    ys.Add(0);
                    break;
                case CourseLayer course:
                    xs.AddRange(course.Points.Select(p => p.X));
                    ys.AddRange(course.Points.SelectMany(p => new[] { p.Y.Low, p.Y.Value, p.Y.High }));
                    break;
                case DotLayer dots:
                    xs.AddRange(dots.Points.Select(p => p.X));
                    ys.AddRange(dots.Points.SelectMany(p => new[] { p.Y.Low, p.Y.Value, p.Y.High }));
                    break;
                case BarLayer bars:
                    ys.AddRange(bars.Bars.SelectMany(b => new[] { b.From, b.To }));
                    break;
                case LevelLayer level:
                    ys.Add(level.Level);
                    break;
                case MarkLayer mark:
                    xs.Add(mark.X);
                    ys.AddRange([mark.Y.Low, mark.Y.High]);
                    break;
                case PinLayer pins:
                    xs.AddRange(pins.Pins.Select(p => p.X));
                    ys.AddRange(pins.Pins.Select(p => p.Y));
                    break;
            }
        }

        return (xs, left, right);
    }
}
