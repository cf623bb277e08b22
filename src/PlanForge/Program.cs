using PlanForge;
using PlanForge.Terminals;

return (int)Application.Run(args, Terminal.OfProcess());
